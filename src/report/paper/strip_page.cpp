// SPDX-License-Identifier: MIT
#include "report/paper/strip_page.hpp"

#include "report/draw/roll.hpp"
#include "report/figures.hpp"
#include "report/lists.hpp"
#include "report/paper/strip_lists.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report::paper {
namespace {

constexpr double types[] = {3.2, 2.9, 2.7}; ///< of the lists, where the drawing is as large
constexpr double small_type = 2.4;          ///< where the drawing gains by it
constexpr double as_large = 0.94;
constexpr double gains = 1.1;
constexpr double drawing_type = 2.8;
constexpr double least_drawing = 90; ///< height of the drawing below which lists go to a next page
constexpr double largest_scale = 0.5;
constexpr double gap = 1.5;

draw::RollView view_of(const Strip& strip, const Roll& roll, double scale, bool straight,
                       const Measures& measures) {
    draw::RollView view;
    view.from = strip.from;
    view.to = strip.to;
    view.scale = scale;
    view.type = drawing_type;
    view.labels = {{11, 9.5, 8.2, 7, 6, 5.2}, {9, 8, 7, 6, 5, 4.2, 3.5, 3, 2.6}, 0.42};
    if (straight)
        view.cut_sizes = {3.4, 3.0, 2.6};
    for (const CutStep& step : strip.steps) {
        view.cuts_numbered.push_back(step.number);
        view.rulers[step.number] = measures.size(step.ruler);
        for (const FilmAway& film : step.falls_away)
            view.left_over.push_back({film.usable, left_over_text(film, roll, measures)});
    }
    view.says_finished = true;
    return view;
}

class StripPage {
public:
    StripPage(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
              const std::vector<Strip>& strips, std::size_t which, const Measures& measures,
              const draw::Letters& letters)
        : sheet_(sheet), pieces_(pieces), strips_(strips), which_(which), measures_(measures),
          letters_(letters), lists_(made_lists()) {}

    std::vector<draw::Picture> set(PageSize upright) {
        const PageSize size = better_of(upright, {upright.height, upright.width});
        const double largest = scale_on(size);
        const bool fit = lists_fit(size);
        type_ = small_type;
        if (scale_on(size) > gains * largest)
            return on(size);
        for (const double type : types) {
            type_ = type;
            if (lists_fit(size) == fit && scale_on(size) >= as_large * largest)
                break;
        }
        return on(size);
    }

private:
    PageSize better_of(PageSize upright, PageSize across) const {
        if (!lists_fit(upright) && lists_fit(across))
            return across;
        const bool larger = scale_on(across) > 1.15 * scale_on(upright);
        return larger && lists_fit(across) ? across : upright;
    }

    const Strip& strip() const { return strips_[which_]; }
    bool straight() const { return sheet_.plan.job().by == CutBy::straight; }

    std::string title() const {
        // What a plotter cuts comes off the roll in no strips: it is only drawn in sections.
        std::string text = (straight() ? "STRIP " : "SECTION ") + std::to_string(which_ + 1) +
                           " OF " + std::to_string(strips_.size());
        if (sheet_.plan.layout().rolls.size() > 1)
            text += " · ROLL " + roll_name(sheet_, strip().roll);
        return text;
    }
    std::string place() const {
        return measures_.size(strip().from) + " to " + measures_.size_with_unit(strip().to) +
               " from the free end";
    }

    Block title_with(double scale) const {
        return Title{title() + ": " + place(),
                     "drawn 1 : " + std::to_string(std::llround(1 / scale))};
    }

    Document made_lists() const {
        Document document;
        if (straight()) {
            document.push_back(cuts_to_tick(sheet_, strip().roll, strip().steps, measures_));
            document.push_back(Line{how_to_set_the_ruler()});
        }
        for (const Block& block : lists_of_strip(sheet_, pieces_, strip(), measures_))
            document.push_back(block);
        return document;
    }

    double lists_height(PageSize size) const {
        // Measured by setting them on a page without an end.
        Flow flow({size.width, 1e6}, type_, letters_);
        const double before = flow.room();
        flow.add(lists_);
        return before - flow.room();
    }

    const Roll& roll() const {
        return sheet_.plan.job().rolls.at(sheet_.plan.layout().rolls.at(strip().roll).roll);
    }
    double film_width() const { return static_cast<double>(roll().width) / 1000; }

    double height_beside_lists(PageSize size) const {
        return height_under_title(size) - lists_height(size);
    }
    double height_under_title(PageSize size) const {
        Flow flow(size, type_, letters_);
        flow.add(title_with(1));
        return flow.room() - 2 * gap - 0.5;
    }
    /// Whether a drawing of fair size and the lists go on one page.
    bool lists_fit(PageSize size) const { return height_beside_lists(size) >= least_drawing; }

    /// What the drawing may take of a page.
    double drawing_height(PageSize size) const {
        return lists_fit(size) ? height_beside_lists(size) : height_under_title(size);
    }

    double scale_on(PageSize size) const {
        const Flow flow(size, type_, letters_);
        const double beside =
            draw::room_beside_roll(view_of(strip(), roll(), 1, straight(), measures_));
        const double around = 6 * drawing_type; // leaders above, distances below
        const double length = static_cast<double>(strip().to - strip().from) / 1000;
        return std::min({(flow.width() - beside) / length,
                         (drawing_height(size) - around) / film_width(), largest_scale});
    }

    std::vector<draw::Picture> on(PageSize size) const {
        Flow flow(size, type_, letters_);
        const double scale = scale_on(size);
        flow.add(title_with(scale));
        flow.space(gap);
        flow.add_centred(draw::roll_picture(sheet_, pieces_, strip().roll, measures_,
                                            view_of(strip(), roll(), scale, straight(), measures_),
                                            letters_));
        flow.space(gap);
        if (!lists_fit(size)) {
            flow.new_page();
            flow.add(Title{title() + ": CUTS AND PIECES", ""});
        }
        flow.add(lists_);
        return std::move(flow).pages();
    }

    const Sheet& sheet_;
    const std::vector<PlacedPiece>& pieces_;
    const std::vector<Strip>& strips_;
    std::size_t which_;
    const Measures& measures_;
    const draw::Letters& letters_;
    Document lists_; ///< made once, set in several sizes
    double type_ = 2.7;
};

} // namespace

std::vector<draw::Picture> strip_pages(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                                       const std::vector<Strip>& strips, std::size_t which,
                                       PageSize size, const Measures& measures,
                                       const draw::Letters& letters) {
    return StripPage(sheet, pieces, strips, which, measures, letters).set(size);
}

} // namespace pelt::report::paper
