// SPDX-License-Identifier: MIT
#include "report/paper/overview.hpp"

#include "report/draw/roll.hpp"
#include "report/legend.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report::paper {
namespace {

constexpr double type = 2.5;
constexpr double note = 2.5;
constexpr double largest_scale = 0.125;
constexpr double least_scale = 0.008; ///< below it numbers are hard to read: another page
constexpr std::size_t most_rows = 8;

draw::RollView view_of(const Strip& row, double scale) {
    draw::RollView view;
    view.from = row.from;
    view.to = row.to;
    view.scale = scale;
    view.type = type;
    view.labels = {{}, {7, 6, 5, 4.2, 3.6, 3.0, 2.6}};
    view.says_sizes = false;
    return view;
}

struct Overview {
    double scale = 0;
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

    /// The largest that is no higher than `height`; the smallest where nothing is.
    Overview within(double height) const {
        std::optional<Overview> best;
        for (std::size_t rows = 1; rows <= most_rows; ++rows) {
            Overview next = in_rows(rows, height);
            const bool better = !best ||
                                (next.height <= height && next.scale > best->scale + 1e-9) ||
                                (best->height > height && next.height < best->height);
            if (better)
                best = std::move(next);
        }
        return std::move(*best);
    }

private:
    std::vector<Strip> strips_on(std::size_t roll) const {
        std::vector<Strip> own;
        for (const Strip& strip : strips_)
            if (strip.roll == roll)
                own.push_back(strip);
        return own;
    }

    Overview in_rows(std::size_t rows, double height) const {
        std::vector<std::vector<Strip>> all;
        Um longest = 1;
        std::size_t count = 0;
        for (std::size_t roll = 0; roll < sheet_.plan.layout().rolls.size(); ++roll) {
            all.push_back(rows_of(strips_on(roll), rows));
            count += all.back().size();
            for (const Strip& row : all.back())
                longest = std::max(longest, row.to - row.from);
        }
        const double beside = draw::room_beside_roll(view_of({}, 1));
        const double by_width = (width_ - beside) * 1000 / static_cast<double>(longest);
        double scale = std::min(by_width, largest_scale);
        Overview out = drawn(all, scale);
        // What is too high by a little is drawn smaller.
        const double film = film_height(all) * scale;
        if (out.height > height && film > 0) {
            scale *= std::max(0.3, (film - (out.height - height)) / film) * 0.98;
            out = drawn(all, scale);
        }
        return out;
    }

    double film_height(const std::vector<std::vector<Strip>>& all) const {
        double sum = 0;
        for (const std::vector<Strip>& rows : all)
            for (const Strip& row : rows)
                sum += static_cast<double>(width_of_roll(row.roll)) / 1000;
        return sum;
    }

    Um width_of_roll(std::size_t roll) const {
        return sheet_.plan.job().rolls.at(sheet_.plan.layout().rolls.at(roll).roll).width;
    }

    Overview drawn(const std::vector<std::vector<Strip>>& all, double scale) const {
        Overview out;
        out.scale = scale;
        for (const std::vector<Strip>& rows : all) {
            out.pictures.push_back(title_of(rows.front().roll, scale));
            for (const Strip& row : rows)
                out.pictures.push_back(draw::roll_picture(sheet_, pieces_, row.roll, measures_,
                                                          view_of(row, scale), letters_));
        }
        for (const draw::Picture& picture : out.pictures)
            out.height += picture.height;
        return out;
    }

    draw::Picture title_of(std::size_t roll, double scale) const {
        draw::Picture out;
        out.width = width_;
        out.height = 1.9 * note;
        out.marks.push_back(
            draw::Text{roll_title(sheet_, roll, measures_) +
                           " · drawn 1 : " + std::to_string(std::llround(1 / scale)) +
                           " · numbers of the pieces; below, the distance from the free end in " +
                           measures_.size_unit(),
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

void add_overview(Flow& flow, const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                  const std::vector<Strip>& strips, const Measures& measures,
                  const draw::Letters& letters) {
    if (strips.empty())
        return;
    const OverviewSetter setter(sheet, pieces, strips, measures, letters, flow.width());
    const draw::Picture legend = legend_lines(sheet, note, flow.width(), letters);
    const double gap = 2;
    Overview overview = setter.within(flow.room() - legend.height - gap);
    if (overview.height > flow.room() || overview.scale < least_scale) {
        flow.new_page();
        overview = setter.within(flow.room() - legend.height - gap);
    }
    flow.space(gap);
    for (const draw::Picture& picture : overview.pictures)
        flow.add(picture);
    flow.add(legend);
}

} // namespace pelt::report::paper
