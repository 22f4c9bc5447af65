// SPDX-License-Identifier: MIT
#include "report/draw/range_bar.hpp"

#include <algorithm>
#include <string>

namespace pelt::report::draw {
namespace {

class Bar {
public:
    Bar(const Estimate& estimate, double width, double type, const Measures& measures,
        const Letters& letters)
        : estimate_(estimate), width_(width), type_(type), measures_(measures), letters_(letters) {}

    Picture drawn() {
        set_scale();
        picture_.width = width_;
        const double top = row(4);
        const double bottom = row(5.2);
        const double low = at(*estimate_.length.low);
        const double high = at(estimate_.length.high.value_or(longest_));
        const double middle = (top + bottom) / 2;
        picture_.marks.push_back(
            Path{Look::rule, {{{at(shortest_), middle}, {at(longest_), middle}}}, false});
        picture_.marks.push_back(
            Rectangle{Look::shade, {low, top, high - low, bottom - top}});
        picture_.marks.push_back(
            Rectangle{Look::frame, {low, top, high - low, bottom - top}});
        label("low " + text(estimate_.length.low), low, row(6.4), row(5.8), bottom);
        label("high " + text(estimate_.length.high), high, row(6.4), row(5.8), bottom);
        label("middle " + text(estimate_.length.middle), at(estimate_.length.middle.value_or(longest_)),
              row(7.9), row(7.3), top);
        label("as scaled " + text(estimate_.as_scaled_length), at(estimate_.as_scaled_length), row(2.6),
              row(3.2), bottom);
        if (!estimate_.order.lines.empty())
            label("price by " + measures_.film(estimate_.order.length()), at(ordered()), row(1.1),
                  row(1.7), bottom);
        picture_.height = row(8.8);
        return std::move(picture_);
    }

private:
    Um ordered() const { return estimate_.order.length().floor_um(); }

    void set_scale() {
        std::vector<Um> all{*estimate_.length.low, estimate_.as_scaled_length};
        for (const auto& length : {estimate_.length.middle, estimate_.length.high})
            if (length)
                all.push_back(*length);
        if (!estimate_.order.lines.empty())
            all.push_back(ordered());
        const auto [least, most] = std::minmax_element(all.begin(), all.end());
        shortest_ = *least;
        longest_ = std::max(*most, *least + um_per_mm);
    }

    double row(double n) const { return n * type_ * 1.2; }

    /// The scale leaves room for words at both ends.
    double at(Um length) const {
        const double room = width_ * .18;
        const double share = static_cast<double>(length - shortest_) /
                             static_cast<double>(longest_ - shortest_);
        return room + share * (width_ - 2 * room);
    }

    std::string text(std::optional<Um> length) const {
        return length ? measures_.film(*length) : "longer than any roll";
    }

    /// Words, and a line from beside them to the bar.
    void label(const std::string& words, double x, double y, double from, double to) {
        picture_.marks.push_back(Path{Look::tick, {{{x, from}, {x, to}}}, false});
        const double half = letters_.width(words, type_, Face::plain) / 2;
        const double middle = std::clamp(x, half, std::max(half, width_ - half));
        picture_.marks.push_back(Text{words, {middle, y}, type_});
    }

    const Estimate& estimate_;
    double width_;
    double type_;
    const Measures& measures_;
    const Letters& letters_;
    Um shortest_ = 0;
    Um longest_ = 0;
    Picture picture_;
};

} // namespace

Picture range_bar(const Estimate& estimate, double width, double type, const Measures& measures,
                  const Letters& letters) {
    if (!estimate.length.low)
        return {};
    return Bar(estimate, width, type, measures, letters).drawn();
}

} // namespace pelt::report::draw
