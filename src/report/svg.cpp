// SPDX-License-Identifier: MIT
#include "report/draw/svg.hpp"

#include "report/draw/roll.hpp"
#include "report/facts.hpp"
#include "report/figures.hpp"
#include "report/legend.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

constexpr double title_size = 90;
constexpr double note_size = 56;
constexpr double page_margin = 80;
constexpr double lines_to_paper = 12; ///< how much stronger lines are than on paper

class RollPage {
public:
    explicit RollPage(const Sheet& sheet) : sheet_(sheet), measures_(sheet.unit) {}

    std::string written() {
        titles();
        rolls();
        legend();
        page_.height = y_ + page_margin / 2;
        return draw::svg_file(vehicles_of(sheet_.plan.job()), draw::svg_style(lines_to_paper),
                              page_);
    }

private:
    void put_left(draw::Face face, double size, const std::string& text) {
        y_ += size * 1.35;
        page_.marks.push_back(
            draw::Text{text, {page_margin, y_ - size / 3}, size, draw::Anchor::start, face});
        page_.width = std::max(page_.width, 2 * page_margin + letters_.width(text, size, face));
    }

    bool has_arrow() const { return sheet_.plan.job().film.direction != Direction::any; }

    void titles() {
        const Job& job = sheet_.plan.job();
        y_ = page_margin / 2;
        put_left(draw::Face::bold, title_size,
                 vehicles_by_letter(job) + (is_demonstration(job) ? " · DEMONSTRATION" : ""));
        put_left(draw::Face::plain, note_size,
                 "Film: " + job.film.name + " · " + by_text(job.by) +
                     " · face up, free end on the left" +
                     (has_arrow() ? ", film arrow to the right" : ""));
        const std::string code = check_code_of(sheet_);
        put_left(draw::Face::plain, note_size,
                 "Check code: " + (code.empty() ? std::string("____________") : code) +
                     (sheet_.date.empty() ? "" : " · date: " + sheet_.date) + " · sizes in " +
                     measures_.size_unit());
    }

    void rolls() {
        const std::vector<PlacedPiece> pieces = pieces_by_number(sheet_.plan);
        for (std::size_t i = 0; i < sheet_.plan.layout().rolls.size(); ++i) {
            const Um length = sheet_.plan.layout().rolls[i].length;
            y_ += page_margin / 2;
            put_left(draw::Face::plain, note_size, roll_title(sheet_, i, measures_));
            const draw::Picture roll = draw::roll_picture(sheet_, pieces, i, measures_,
                                                          draw::in_true_size(length), letters_);
            page_.marks.push_back(draw::GroupBegin{"roll", "roll-" + std::to_string(i + 1),
                                                   roll_title(sheet_, i, measures_), ""});
            draw::put(page_, roll, page_margin, y_ + page_margin / 2);
            page_.marks.push_back(draw::GroupEnd{});
            y_ += page_margin / 2 + roll.height;
            page_.width = std::max(page_.width, roll.width + 2 * page_margin);
        }
    }

    void legend() {
        y_ += page_margin / 2;
        const draw::Picture legend = legend_picture(sheet_, note_size, letters_);
        draw::put(page_, legend, page_margin, y_);
        page_.width = std::max(page_.width, legend.width + 2 * page_margin);
        y_ += legend.height;
    }

    const Sheet& sheet_;
    Measures measures_;
    draw::UnknownLetters letters_;
    draw::Picture page_;
    double y_ = 0;
};

} // namespace

std::string to_svg(const Sheet& sheet) {
    return RollPage(sheet).written();
}

} // namespace pelt::report
