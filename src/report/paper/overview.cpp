// SPDX-License-Identifier: MIT
#include "report/paper/overview.hpp"

#include "report/draw/roll.hpp"
#include "report/legend.hpp"
#include "report/paper/type_sizes.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report::paper {
namespace {

constexpr double type = smallest_type;
constexpr double note = smallest_type;
constexpr double gap = 2; ///< above the drawing
constexpr double title_height = 1.9 * note;
// Leaders above a row and distances below it, in terms of the type: where many pieces need leaders,
// and where hardly one does.
constexpr double around_full_row = 7.5;
constexpr double around_bare_row = 4.2;
constexpr double largest_scale = 0.125;
constexpr double least_scale = 1.0 / 150; ///< below it numbers are hard to read: another page
constexpr std::size_t most_rows = 8;
constexpr int most_steps = 12;

draw::RollView view_of(const Strip& row, double scale, double width) {
    draw::RollView view;
    view.width = width - type;
    view.from = row.from;
    view.to = row.to;
    view.scale = scale;
    view.type = type;
    view.labels = {{}, {8.3, 7, 6, 5, 4.2, 3.6, smallest_type}};
    view.says_sizes = false;
    return view;
}

struct RowPlan {
    std::vector<Strip> rows;
    double scale = 0;
};

struct Overview {
    RowPlan plan;
    std::vector<draw::Picture> pictures; ///< a title before the rows of every roll
    double height = 0;
};

class OverviewSetter {
public:
    OverviewSetter(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                   const std::vector<Strip>& strips, const Measures& measures,
                   const draw::Letters& letters, double width)
        : sheet_(sheet), pieces_(pieces), strips_(strips), measures_(measures), letters_(letters),
          width_(width) {}

    /// The largest that is no higher than `height`, if there is one.
    Overview within(double height) const {
        Overview sure = fitted(best_plan(height, around_full_row), height);
        Overview hoped = fitted(best_plan(height, around_bare_row), height);
        const bool better = hoped.height <= height && hoped.plan.scale > sure.plan.scale;
        return better ? hoped : sure;
    }

    /// The number of rows that promises the largest scale.
    RowPlan best_plan(double height, double around_row = around_full_row) const {
        const std::size_t rolls = sheet_.plan.layout().rolls.size();
        RowPlan best;
        for (std::size_t count = rolls; count < rolls + most_rows; ++count) {
            const Um longest = row_length(strips_, count);
            RowPlan plan{rows_within(strips_, longest), 0};
            plan.scale = std::min({largest_scale, scale_by_width(longest),
                                   scale_by_height(plan.rows, rolls, height, around_row)});
            if (plan.scale > best.scale || best.rows.empty())
                best = std::move(plan);
        }
        return best;
    }

private:
    /// In another scale, so that it fills the height but is no higher, where that can be.
    Overview fitted(RowPlan plan, double height) const {
        Overview out = drawn(std::move(plan));
        for (int step = 0; step < most_steps && out.height > height; ++step)
            out = drawn({out.plan.rows, out.plan.scale * 0.94});
        // Where few pieces need a number above the roll, rows take less room than was promised.
        for (int step = 0; step < most_steps; ++step) {
            const double scale = out.plan.scale * 1.04;
            if (scale > std::min(largest_scale, scale_by_width(longest_of(out.plan.rows))))
                break;
            Overview larger = drawn({out.plan.rows, scale});
            if (larger.height > height)
                break;
            out = std::move(larger);
        }
        return out;
    }

    static Um longest_of(const std::vector<Strip>& rows) {
        Um longest = 1;
        for (const Strip& row : rows)
            longest = std::max(longest, row.to - row.from);
        return longest;
    }

    double scale_by_width(Um longest) const {
        return (width_ - draw::room_beside_roll(view_of({}, 1, width_))) * 1000 /
               static_cast<double>(longest);
    }

    double scale_by_height(const std::vector<Strip>& rows, std::size_t rolls, double height,
                           double around_row) const {
        double film = 0;
        for (const Strip& row : rows)
            film += static_cast<double>(sheet_.plan.job()
                                            .rolls.at(sheet_.plan.layout().rolls.at(row.roll).roll)
                                            .width) /
                    1000;
        const double words = static_cast<double>(rows.size()) * around_row * type +
                             static_cast<double>(rolls) * title_height;
        return std::max(1e-3, (height - words) / film);
    }

    Overview drawn(RowPlan plan) const {
        Overview out{std::move(plan), {}, 0};
        const std::vector<Strip>& rows = out.plan.rows;
        for (std::size_t i = 0; i < rows.size(); ++i) {
            if (i == 0 || rows[i].roll != rows[i - 1].roll)
                out.pictures.push_back(title_of(rows[i].roll, out.plan.scale));
            out.pictures.push_back(draw::roll_picture(sheet_, pieces_, rows[i].roll, measures_,
                                                      view_of(rows[i], out.plan.scale, width_),
                                                      letters_));
        }
        for (const draw::Picture& picture : out.pictures)
            out.height += picture.height;
        return out;
    }

    draw::Picture title_of(std::size_t roll, double scale) const {
        draw::Picture out;
        out.width = width_;
        out.height = title_height;
        out.marks.push_back(
            draw::Text{roll_title(sheet_, roll, measures_) +
                           " · 1 : " + std::to_string(std::llround(1 / scale)) +
                           " · below: " + measures_.size_unit() + " from the free end",
                       {0, 0.9 * note},
                       note,
                       draw::Anchor::start});
        return out;
    }

    const Sheet& sheet_;
    const std::vector<PlacedPiece>& pieces_;
    const std::vector<Strip>& strips_;
    const Measures& measures_;
    const draw::Letters& letters_;
    double width_;
};

} // namespace

double overview_scale(const Flow& flow, const Sheet& sheet, const std::vector<Strip>& strips,
                      const draw::Letters& letters) {
    if (strips.empty())
        return largest_scale;
    const double legend = legend_lines(sheet, note, flow.width(), letters).height;
    const Measures measures(sheet.unit);
    return OverviewSetter(sheet, {}, strips, measures, letters, flow.width())
        .best_plan(flow.room() - legend - 2 * gap)
        .scale;
}

void add_overview(Flow& flow, const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                  const std::vector<Strip>& strips, const Measures& measures,
                  const draw::Letters& letters) {
    if (strips.empty())
        return;
    const OverviewSetter setter(sheet, pieces, strips, measures, letters, flow.width());
    const draw::Picture legend = legend_lines(sheet, note, flow.width(), letters);
    Overview overview = setter.within(flow.room() - legend.height - 2 * gap);
    if (overview.height > flow.room() - legend.height - 2 * gap || overview.plan.scale < least_scale) {
        flow.new_page();
        overview = setter.within(flow.room() - legend.height - 2 * gap);
    }
    flow.space(gap);
    for (const draw::Picture& picture : overview.pictures)
        flow.add(picture);
    flow.add(legend);
}

} // namespace pelt::report::paper
