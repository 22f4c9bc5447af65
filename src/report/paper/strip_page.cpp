// SPDX-License-Identifier: MIT
#include "report/paper/strip_page.hpp"

#include "report/draw/roll.hpp"
#include "report/figures.hpp"
#include "report/legend.hpp"
#include "report/lists.hpp"
#include "report/paper/strip_lists.hpp"
#include "report/paper/type_sizes.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace pelt::report::paper {
namespace {

constexpr double least_drawing = 64; ///< height of the drawing below which lists go to a next page
constexpr double largest_scale = 0.5;
constexpr double shared_scale = 1.0 / 28; ///< strips that share a page are drawn so large at least
constexpr double gap = 1.5;

draw::RollView view_of(const Strip& strip, const Roll& roll, double scale, bool straight,
                       const Measures& measures) {
    draw::RollView view;
    view.from = strip.from;
    view.to = strip.to;
    view.scale = scale;
    view.type = plain_type;
    view.labels = {{11, 9.5, 8.3, 7.6}, {9, 8.3, 7, 6, 5, 4.2, 3.5, smallest_type}, 0.42};
    if (straight)
        view.cut_sizes = {3.6, smallest_type};
    for (const CutStep& step : strip.steps) {
        view.cuts_numbered.push_back(step.number);
        view.rulers[step.number] = measures.size(step.ruler);
        for (const FilmAway& film : step.falls_away)
            view.left_over.push_back({film.usable, left_over_text(film, roll, measures)});
    }
    view.says_finished = true;
    return view;
}

struct Drawing {
    draw::Picture picture;
    double scale = 0;
};

/// One page, or one and its lists.
class StripPage {
public:
    StripPage(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
              const std::vector<Strip>& strips, StripRun run, PageSize upright,
              const Measures& measures, const draw::Letters& letters)
        : sheet_(sheet), pieces_(pieces), count_(strips.size()), run_(run),
          strip_(joined(strips, run)), measures_(measures), letters_(letters),
          cuts_(cuts_to_tick(sheet, strip_.roll, strip_.steps, measures)),
          lists_(lists_of_strip(sheet, pieces, strip_, measures)),
          size_(better_of(upright, {upright.height, upright.width})), scale_(scale_on(size_)) {}

    /// Whether several strips may share it.
    bool is_fair() const { return lists_fit(size_) && scale_ >= shared_scale; }
    double scale() const { return scale_; }

    std::vector<draw::Picture> set() const {
        Flow flow(size_, plain_type, letters_);
        const Drawing drawing = fitted();
        flow.add(title_with(drawing.scale));
        flow.space(gap);
        flow.add_centred(drawing.picture);
        flow.space(gap);
        flow.add(legend(size_));
        flow.space(gap);
        if (!lists_fit(size_)) {
            flow.new_page();
            flow.add(Title{title() + ": CUTS AND PIECES", ""});
        }
        add_lists(flow);
        return std::move(flow).pages();
    }

private:
    PageSize better_of(PageSize upright, PageSize across) const {
        if (!lists_fit(upright) && lists_fit(across))
            return across;
        const bool larger = scale_on(across) > 1.15 * scale_on(upright);
        return larger && lists_fit(across) ? across : upright;
    }

    bool straight() const { return sheet_.plan.job().by == CutBy::straight; }

    std::string title() const {
        // What a plotter cuts comes off the roll in no strips: it is only drawn in sections.
        std::string text = straight() ? "STRIP" : "SECTION";
        text += run_.end - run_.first > 1 ? "S " : " ";
        text += std::to_string(run_.first + 1);
        if (run_.end - run_.first > 1)
            text += " TO " + std::to_string(run_.end);
        text += " OF " + std::to_string(count_);
        if (sheet_.plan.layout().rolls.size() > 1)
            text += " · ROLL " + roll_name(sheet_, strip_.roll);
        return text;
    }
    std::string place() const {
        return measures_.size(strip_.from) + " to " + measures_.size_with_unit(strip_.to) +
               " from the free end";
    }

    Block title_with(double scale) const {
        return Title{title() + ": " + place(),
                     "drawn 1 : " + std::to_string(std::llround(1 / scale))};
    }

    void add_lists(Flow& flow) const {
        if (straight())
            flow.add_in_two_columns(cuts_);
        flow.add(lists_);
    }

    double lists_height(PageSize size) const {
        // Measured by setting them on a page without an end.
        Flow flow({size.width, 1e6}, plain_type, letters_);
        const double before = flow.room();
        add_lists(flow);
        return before - flow.room();
    }

    draw::Picture legend(PageSize size) const {
        return legend_of_stretch(sheet_, pieces_, {strip_.roll, strip_.from, strip_.to},
                                 smallest_type, Flow(size, plain_type, letters_).width(), letters_);
    }

    const Roll& roll() const {
        return sheet_.plan.job().rolls.at(sheet_.plan.layout().rolls.at(strip_.roll).roll);
    }
    double film_width() const { return static_cast<double>(roll().width) / 1000; }

    double height_beside_lists(PageSize size) const {
        return height_under_title(size) - lists_height(size);
    }
    double height_under_title(PageSize size) const {
        Flow flow(size, plain_type, letters_);
        flow.add(title_with(1));
        return flow.room() - legend(size).height - 3 * gap - 0.5;
    }
    /// Whether a drawing of fair size and the lists go on one page.
    bool lists_fit(PageSize size) const { return height_beside_lists(size) >= least_drawing; }

    /// What the drawing may take of a page.
    double drawing_height(PageSize size) const {
        return lists_fit(size) ? height_beside_lists(size) : height_under_title(size);
    }

    /// About the largest scale in which the drawing fits: how much leaders above and distances below
    /// take is known only once it is drawn, which is too slow for pages that are merely weighed.
    double scale_on(PageSize size) const {
        constexpr double usual_around = 4.5 * plain_type;
        return scale_with(usual_around, size, drawing_height(size));
    }

    /// In the largest scale that fits: begun with what is usual around the film, and given what it
    /// took.
    Drawing fitted() const {
        constexpr int most_tries = 4;
        const double height = drawing_height(size_);
        double around = 3.8 * plain_type;
        for (int i = 0; i < most_tries; ++i) {
            const double scale = scale_with(around, size_, height);
            Drawing drawing{drawn(scale), scale};
            const double taken = drawing.picture.height - scale * film_width();
            if (taken <= around + 1e-9)
                return drawing;
            around = taken;
        }
        const double scale = scale_with(around + plain_type, size_, height);
        return {drawn(scale), scale};
    }

    double scale_with(double around, PageSize size, double height) const {
        const Flow flow(size, plain_type, letters_);
        const double beside =
            draw::room_beside_roll(view_of(strip_, roll(), 1, straight(), measures_));
        const double length = static_cast<double>(strip_.to - strip_.from) / 1000;
        return std::min({(flow.width() - beside) / length, (height - around) / film_width(),
                         largest_scale});
    }

    draw::Picture drawn(double scale) const {
        draw::RollView view = view_of(strip_, roll(), scale, straight(), measures_);
        view.width = Flow(size_, plain_type, letters_).width() - plain_type;
        return draw::roll_picture(sheet_, pieces_, strip_.roll, measures_, view, letters_);
    }

    const Sheet& sheet_;
    const std::vector<PlacedPiece>& pieces_;
    std::size_t count_;
    StripRun run_;
    Strip strip_;
    const Measures& measures_;
    const draw::Letters& letters_;
    Table cuts_;     ///< as the lists, made once and set on several sizes
    Document lists_;
    PageSize size_;
    double scale_ = 0;
};

/// Strips on pages: the fewest pages, and of equally many those whose smallest scale is largest.
class Grouping {
public:
    Grouping(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
             const std::vector<Strip>& strips, PageSize size, const Measures& measures,
             const draw::Letters& letters)
        : sheet_(sheet), pieces_(pieces), strips_(strips), size_(size), measures_(measures),
          letters_(letters), best_(strips.size() + 1) {}

    std::vector<StripPage> pages() {
        best_[0].pages = 0;
        for (std::size_t first = 0; first < strips_.size(); ++first)
            extend(first);
        std::vector<StripRun> runs;
        for (std::size_t end = strips_.size(); end > 0; end = runs.back().first)
            runs.push_back({best_[end].from, end});
        std::vector<StripPage> pages;
        for (auto run = runs.rbegin(); run != runs.rend(); ++run)
            pages.push_back(page(*run));
        return pages;
    }

private:
    /// The best way to set all strips before one: how the last page of it begins.
    struct Best {
        std::size_t pages = std::numeric_limits<std::size_t>::max();
        double scale = 0;
        std::size_t from = 0;
    };

    StripPage page(StripRun run) const {
        return {sheet_, pieces_, strips_, run, size_, measures_, letters_};
    }

    /// Every page that begins with a strip. The strip by itself is always one.
    void extend(std::size_t first) {
        for (std::size_t end = first + 1; end <= strips_.size(); ++end) {
            if (strips_[end - 1].roll != strips_[first].roll)
                return;
            const StripPage candidate = page({first, end});
            if (end > first + 1 && !candidate.is_fair())
                return;
            const Best& before = best_[first];
            const double scale =
                first == 0 ? candidate.scale() : std::min(before.scale, candidate.scale());
            Best& best = best_[end];
            if (before.pages + 1 < best.pages ||
                (before.pages + 1 == best.pages && scale > best.scale))
                best = {before.pages + 1, scale, first};
        }
    }

    const Sheet& sheet_;
    const std::vector<PlacedPiece>& pieces_;
    const std::vector<Strip>& strips_;
    PageSize size_;
    const Measures& measures_;
    const draw::Letters& letters_;
    std::vector<Best> best_;
};

} // namespace

std::vector<draw::Picture> strip_pages(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                                       const std::vector<Strip>& strips, PageSize size,
                                       const Measures& measures, const draw::Letters& letters) {
    std::vector<draw::Picture> out;
    for (const StripPage& page : Grouping(sheet, pieces, strips, size, measures, letters).pages())
        for (draw::Picture& picture : page.set())
            out.push_back(std::move(picture));
    return out;
}

} // namespace pelt::report::paper
