// SPDX-License-Identifier: MIT
#include "report/draw/fit.hpp"
#include "report/facts.hpp"
#include "report/paper/canvas.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/pages.hpp"
#include "report/paper/pattern_list.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::report {
namespace paper {
namespace {

constexpr double tile_margin = 15; ///< on every side; the foot and the control line stand in it
constexpr double foot_room = 12;
constexpr double beyond = 5; ///< lines go on past the frame, so that sheets can be laid over
constexpr double mark_arm = 6;
constexpr double control_length = 100;
constexpr double note = 3;

/// Whether any line of the pattern comes into the box.
bool has_lines(const Pattern& pattern, const draw::Box& box) {
    for (const draw::Path& path : pattern.paths)
        for (const draw::Ring& ring : path.rings)
            for (std::size_t i = 0; i < ring.size(); ++i)
                if (draw::enters(ring[i], ring[(i + 1) % ring.size()], box))
                    return true;
    return false;
}

std::string tile_name(std::size_t column, std::size_t row) {
    std::string letters;
    for (std::size_t c = column + 1; c > 0; c = (c - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (c - 1) % 26));
    return letters + std::to_string(row + 1);
}

class PatternPages {
public:
    /// `mark`: what stands before every title.
    PatternPages(const Pattern& pattern, std::string mark, PageSize size,
                 const draw::Letters& letters)
        : pattern_(pattern), mark_(std::move(mark)), size_(size), letters_(letters),
          tile_width_(size.width - 2 * tile_margin),
          tile_height_(size.height - 2 * tile_margin - foot_room),
          columns_(count(pattern.width, tile_width_)), rows_(count(pattern.height, tile_height_)) {}

    std::size_t printed() const {
        std::size_t sum = 0;
        for (std::size_t row = 0; row < rows_; ++row)
            for (std::size_t column = 0; column < columns_; ++column)
                sum += is_printed(column, row) ? 1 : 0;
        return sum;
    }

    std::vector<draw::Picture> set() {
        if (columns_ * rows_ > 1)
            key_page();
        for (std::size_t row = 0; row < rows_; ++row)
            for (std::size_t column = 0; column < columns_; ++column)
                if (is_printed(column, row))
                    tile_page(column, row);
        return std::move(pages_);
    }

private:
    static std::size_t count(double length, double step) {
        return std::max<std::size_t>(1, static_cast<std::size_t>(std::ceil(length / step - 1e-9)));
    }
    draw::Box tile(std::size_t column, std::size_t row) const {
        return {static_cast<double>(column) * tile_width_, static_cast<double>(row) * tile_height_,
                tile_width_, tile_height_};
    }
    bool is_printed(std::size_t column, std::size_t row) const {
        const draw::Box box = tile(column, row);
        return has_lines(pattern_, {box.x - beyond, box.y - beyond, box.width + 2 * beyond,
                                    box.height + 2 * beyond});
    }

    draw::Picture& add_page() {
        pages_.push_back({{}, size_.width, size_.height});
        return pages_.back();
    }

    void put_lines(draw::Picture& page, const std::string& text, double x, double& y,
                   double width) const {
        const auto measure = [&](const std::string& t) { return letters_.width(t, note); };
        for (const std::string& line : lines_within(text, width, measure)) {
            page.marks.push_back(draw::Text{line, {x, y}, note, draw::Anchor::start});
            y += 1.4 * note;
        }
    }

    static draw::Ring moved(const draw::Ring& ring, double scale, double x, double y) {
        draw::Ring out;
        for (const draw::Point& p : ring)
            out.push_back({x + scale * p.x, y + scale * p.y});
        return out;
    }
    void put_pattern(draw::Picture& page, double scale, double x, double y) const {
        for (const draw::Path& path : pattern_.paths) {
            draw::Path out{path.look, {}};
            for (const draw::Ring& ring : path.rings)
                out.rings.push_back(moved(ring, scale, x, y));
            page.marks.push_back(std::move(out));
        }
    }

    /// How the tiles go together.
    void key_page() {
        draw::Picture& page = add_page();
        double y = tile_margin + note;
        const double width = size_.width - 2 * tile_margin;
        put_lines(page, mark_ + pattern_.title, tile_margin, y, width);
        put_lines(page,
                  "Full size on " + std::to_string(printed()) +
                      " pages. Print them at 100 %, without fitting to the page, and check the "
                      "line of 100 mm on each. Lay neighbors over one another so that their "
                      "crosses meet. No page is printed for a field without a line. Full line: "
                      "cut here; broken line: what stays on the vehicle. The arrow points forward. "
                      "The pattern is for the film's face: on the backing it would be mirrored.",
                  tile_margin, y, width);
        y += 2;
        const double whole_width = static_cast<double>(columns_) * tile_width_;
        const double whole_height = static_cast<double>(rows_) * tile_height_;
        const double scale = std::min(width / whole_width,
                                      (size_.height - tile_margin - foot_room - y) / whole_height);
        for (std::size_t row = 0; row < rows_; ++row)
            for (std::size_t column = 0; column < columns_; ++column) {
                const draw::Box box = tile(column, row);
                const draw::Box small{tile_margin + scale * box.x, y + scale * box.y,
                                      scale * box.width, scale * box.height};
                page.marks.push_back(draw::Rectangle{
                    is_printed(column, row) ? draw::Look::field : draw::Look::left_over, small});
                page.marks.push_back(draw::Text{tile_name(column, row),
                                                {small.x + 1.5, small.y + 3},
                                                std::min(note, 0.3 * small.width),
                                                draw::Anchor::start,
                                                draw::Face::bold});
            }
        put_pattern(page, scale, tile_margin, y);
        page.marks.push_back(draw::Arrow{
            {tile_margin + scale * pattern_.width / 2, y + scale * pattern_.height / 2}, 14, 0});
    }

    void tile_page(std::size_t column, std::size_t row) {
        draw::Picture& page = add_page();
        const draw::Box box = tile(column, row);
        page.marks.push_back(
            draw::ClipBegin{{tile_margin - beyond, tile_margin - beyond, tile_width_ + 2 * beyond,
                             tile_height_ + 2 * beyond}});
        put_pattern(page, 1, tile_margin - box.x, tile_margin - box.y);
        page.marks.push_back(draw::ClipEnd{});
        for (const double x : {tile_margin, tile_margin + tile_width_})
            for (const double y : {tile_margin, tile_margin + tile_height_})
                register_mark(page, x, y);
        neighbours(page, column, row);
        head(page);
        foot(page, column, row);
    }

    /// A pattern that is laid on the backing, or turned, gives a piece for the other side.
    static void head(draw::Picture& page) {
        const double y = tile_margin - 7.5;
        page.marks.push_back(draw::Arrow{{tile_margin + 16, y}, 10, 0});
        page.marks.push_back(
            draw::Text{"forward · film face up", {tile_margin + 23, y}, note, draw::Anchor::start});
    }

    static void register_mark(draw::Picture& page, double x, double y) {
        page.marks.push_back(
            draw::Path{draw::Look::tick, {{{x - mark_arm, y}, {x + mark_arm, y}}}, false});
        page.marks.push_back(
            draw::Path{draw::Look::tick, {{{x, y - mark_arm}, {x, y + mark_arm}}}, false});
        page.marks.push_back(draw::Circle{draw::Look::tick, {x, y}, mark_arm / 2});
    }

    void neighbours(draw::Picture& page, std::size_t column, std::size_t row) const {
        const double middle = tile_margin + tile_width_ / 2;
        const double half = tile_margin + tile_height_ / 2;
        const auto put = [&](const std::string& name, double x, double y) {
            page.marks.push_back(draw::Text{name, {x, y}, note});
        };
        if (row > 0 && is_printed(column, row - 1))
            put("↑ " + tile_name(column, row - 1), middle, tile_margin - 7.5);
        if (row + 1 < rows_ && is_printed(column, row + 1))
            put("↓ " + tile_name(column, row + 1), middle, tile_margin + tile_height_ + 7);
        if (column > 0 && is_printed(column - 1, row))
            put("← " + tile_name(column - 1, row), 7.5, half);
        if (column + 1 < columns_ && is_printed(column + 1, row))
            put(tile_name(column + 1, row) + " →", size_.width - 7.5, half);
    }

    void foot(draw::Picture& page, std::size_t column, std::size_t row) const {
        const double y = tile_margin + tile_height_ + 11.5;
        draw::Path control{draw::Look::control_line,
                           {{{tile_margin, y}, {tile_margin + control_length, y}}},
                           false};
        for (const double x : {tile_margin, tile_margin + control_length})
            control.rings.push_back({{x, y - 1.5}, {x, y + 1.5}});
        page.marks.push_back(std::move(control));
        page.marks.push_back(draw::Text{"100 mm: measure it; print at 100 %",
                                        {tile_margin + control_length + 3, y},
                                        note,
                                        draw::Anchor::start});
        const std::string name =
            mark_ + (columns_ * rows_ > 1 ? tile_name(column, row) + " · " + pattern_.title
                                          : pattern_.title);
        const double room = size_.width - 2 * tile_margin - 32;
        const auto measure = [&](const std::string& t) { return letters_.width(t, note); };
        page.marks.push_back(draw::Text{lines_within(name, room, measure).front(),
                                        {tile_margin, y + 5},
                                        note,
                                        draw::Anchor::start,
                                        draw::Face::plain});
    }

    const Pattern& pattern_;
    std::string mark_;
    PageSize size_;
    const draw::Letters& letters_;
    double tile_width_;
    double tile_height_;
    std::size_t columns_;
    std::size_t rows_;
    std::vector<draw::Picture> pages_;
};

} // namespace

std::vector<draw::Picture> pattern_pages(const Sheet& sheet, Paper paper,
                                         const draw::Letters& letters) {
    const Measures measures(sheet.unit);
    std::vector<draw::Picture> pages;
    const PageSize upright = size_of(paper);
    const std::string mark = is_demonstration(sheet.plan.job()) ? "DEMONSTRATION · " : "";
    for (const Pattern& pattern : patterns_of(sheet, measures)) {
        PatternPages tall(pattern, mark, upright, letters);
        PatternPages broad(pattern, mark, {upright.height, upright.width}, letters);
        for (draw::Picture& page : broad.printed() < tall.printed() ? broad.set() : tall.set())
            pages.push_back(std::move(page));
    }
    add_page_numbers(pages);
    return pages;
}

} // namespace paper

std::size_t pages_of_patterns(const Sheet& sheet, Paper size) {
    return paper::pattern_pages(sheet, size, paper::PaperLetters()).size();
}

std::string to_pattern_pdf(const Sheet& sheet, Paper size) {
    const paper::PaperLetters letters;
    return paper::to_pdf(paper::pattern_pages(sheet, size, letters),
                         "Patterns in full size: " + vehicles_of(sheet.plan.job()));
}

} // namespace pelt::report
