// SPDX-License-Identifier: MIT
#include "report/draw/cut_number.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::report::draw {
namespace {

class Slide {
public:
    Slide(Point a, Point b, const std::string& number, const std::string& ruler, double size,
          const Letters& letters)
        : a_(a), b_(b), number_(number), ruler_(ruler), size_(size), upwards_(a.x == b.x) {
        if (upwards_ && a_.y < b_.y)
            std::swap(a_, b_);
        length_ = std::abs(b_.x - a_.x) + std::abs(b_.y - a_.y);
        radius_ = std::max(0.62, letters.width_em(number, Face::bold) / 2 + 0.2) * size;
        tail_ = ruler.empty() ? 0 : letters.width(ruler, size, Face::bold) + 0.5 * size;
    }

    std::optional<SetCutNumber> set(const std::vector<Box>& taken) const {
        for (double along = radius_ + 0.3 * size_; along <= length_ - radius_ - tail_;
             along += radius_) {
            const Box box = box_at(along);
            const bool is_free = std::none_of(
                taken.begin(), taken.end(), [&](const Box& other) { return box.overlaps(other); });
            if (is_free)
                return SetCutNumber{picture_at(along), box};
        }
        return std::nullopt;
    }

private:
    Point at(double along) const {
        return {a_.x + (b_.x - a_.x) / length_ * along, a_.y + (b_.y - a_.y) / length_ * along};
    }

    Box box_at(double along) const {
        const Point middle = at(along);
        const Point end = at(along + radius_ + tail_);
        return upwards_ ? Box{middle.x - radius_, end.y, 2 * radius_, middle.y + radius_ - end.y}
                        : Box{middle.x - radius_, middle.y - radius_, end.x - middle.x + radius_,
                              2 * radius_};
    }

    Picture picture_at(double along) const {
        Picture out;
        if (!ruler_.empty())
            put_ruler(out, at(along + radius_), at(along + radius_ + tail_));
        out.marks.push_back(Circle{Look::number_ring, at(along), radius_});
        out.marks.push_back(Text{number_, at(along), size_, Anchor::middle, Face::bold, false});
        return out;
    }

    void put_ruler(Picture& out, const Point& from, const Point& to) const {
        const double half = 0.55 * size_;
        out.marks.push_back(
            Rectangle{Look::plate, upwards_ ? Box{from.x - half, to.y, 2 * half, from.y - to.y}
                                            : Box{from.x, from.y - half, to.x - from.x, 2 * half}});
        out.marks.push_back(Text{ruler_,
                                 {(from.x + to.x) / 2, (from.y + to.y) / 2},
                                 size_,
                                 Anchor::middle,
                                 Face::bold,
                                 upwards_});
    }

    Point a_;
    Point b_;
    const std::string& number_;
    const std::string& ruler_;
    double size_;
    bool upwards_;
    double length_ = 0;
    double radius_ = 0;
    double tail_ = 0; ///< what the ruler's measure takes after the ring
};

} // namespace

std::optional<SetCutNumber> set_cut_number(const Point& a, const Point& b,
                                           const std::string& number, const std::string& ruler,
                                           const std::vector<double>& sizes, const Letters& letters,
                                           const std::vector<Box>& taken) {
    const std::string nothing;
    for (const std::string* words : {&ruler, &nothing})
        for (const double size : sizes)
            if (auto set = Slide(a, b, number, *words, size, letters).set(taken))
                return set;
    return std::nullopt;
}

} // namespace pelt::report::draw
