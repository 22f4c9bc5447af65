// SPDX-License-Identifier: MIT
// Whether a drawing can be read: looks at its marks alone, not at how they were placed.
#pragma once

#include "report/draw/picture.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace pelt::test {

using namespace pelt::report;

/// By how much boxes may touch, in terms of the smallest letters: rounding.
inline constexpr double touch = 0.02;

inline draw::Box shrunk(const draw::Box& b, double by) {
    return {b.x + by, b.y + by, b.width - 2 * by, b.height - 2 * by};
}

inline bool inside_rings(const std::vector<draw::Ring>& rings, double x, double y) {
    bool inside = false;
    for (const draw::Ring& ring : rings)
        for (std::size_t i = 0, k = ring.size() - 1; i < ring.size(); k = i++)
            if ((ring[i].y > y) != (ring[k].y > y) &&
                x < ring[i].x + (y - ring[i].y) / (ring[k].y - ring[i].y) * (ring[k].x - ring[i].x))
                inside = !inside;
    return inside;
}

/// Points all along the sides of a box and within it.
inline bool box_inside_rings(const std::vector<draw::Ring>& rings, const draw::Box& box) {
    constexpr int steps = 40;
    for (int i = 0; i <= steps; ++i)
        for (int k = 0; k <= 4; ++k)
            for (const bool along : {true, false}) {
                const double u = static_cast<double>(i) / steps;
                const double v = static_cast<double>(k) / 4;
                if (!inside_rings(rings, box.x + box.width * (along ? u : v),
                                  box.y + box.height * (along ? v : u)))
                    return false;
            }
    return true;
}

/// What is wrong with a page: a text over another, over a cut's ring, out of its piece, off the
/// page.
class PictureCheck {
public:
    PictureCheck(const draw::Picture& picture, const draw::Letters& letters)
        : picture_(picture), letters_(letters) {}

    std::vector<std::string> faults() {
        for (const draw::Mark& mark : picture_.marks)
            look_at(mark);
        for (std::size_t i = 0; i < texts_.size(); ++i) {
            for (std::size_t k = i + 1; k < texts_.size(); ++k)
                if (near(i).overlaps(near(k)))
                    faults_.push_back("'" + texts_[i]->words + "' lies over '" + texts_[k]->words +
                                      "'");
            for (const draw::Circle* ring : rings_)
                if (!is_in_ring(*texts_[i], *ring) &&
                    near(i).overlaps(shrunk(box_of(*ring), touch)))
                    faults_.push_back("'" + texts_[i]->words + "' lies over a ring");
        }
        return faults_;
    }
    std::size_t texts_in_pieces() const { return in_pieces_; }
    std::size_t pieces() const { return pieces_; }

private:
    static draw::Box box_of(const draw::Circle& c) {
        return {c.middle.x - c.radius, c.middle.y - c.radius, 2 * c.radius, 2 * c.radius};
    }
    static bool is_in_ring(const draw::Text& t, const draw::Circle& c) {
        return std::hypot(t.at.x - c.middle.x, t.at.y - c.middle.y) < 1e-6;
    }
    draw::Box near(std::size_t i) const {
        return shrunk(draw::box_of(*texts_[i], letters_), touch * texts_[i]->size);
    }

    void look_at(const draw::Mark& mark) {
        if (const auto* group = std::get_if<draw::GroupBegin>(&mark)) {
            in_piece_ = group->css_class.rfind("piece", 0) == 0;
            pieces_ += in_piece_ ? 1 : 0;
            finished_.reset();
            cut_.reset();
            on_plate_ = false;
        }
        if (std::holds_alternative<draw::GroupEnd>(mark))
            in_piece_ = false;
        if (const auto* clip = std::get_if<draw::ClipBegin>(&mark))
            clip_ = clip->box;
        if (std::holds_alternative<draw::ClipEnd>(mark))
            clip_.reset();
        const auto* path = std::get_if<draw::Path>(&mark);
        if (path != nullptr && in_piece_ &&
            (path->look == draw::Look::wrapped || path->look == draw::Look::inlay))
            finished_ = path;
        if (path != nullptr && in_piece_ && path->look == draw::Look::blank)
            cut_ = path;
        if (const auto* plate = std::get_if<draw::Rectangle>(&mark))
            on_plate_ = in_piece_ && plate->look == draw::Look::plate;
        if (const auto* circle = std::get_if<draw::Circle>(&mark))
            if (circle->look == draw::Look::number_ring)
                rings_.push_back(circle);
        if (const auto* text = std::get_if<draw::Text>(&mark))
            look_at(*text);
    }

    void look_at(const draw::Text& text) {
        if (text.words.empty())
            return;
        texts_.push_back(&text);
        const draw::Box box = near(texts_.size() - 1);
        if (!draw::Box{0, 0, picture_.width, picture_.height}.holds(box))
            faults_.push_back("'" + text.words + "' leaves the page");
        if (clip_ && !clip_->holds(box))
            faults_.push_back("'" + text.words + "' is cut off");
        if (!in_piece_)
            return;
        ++in_pieces_;
        // Over the line where the film ends on the vehicle only a plate keeps words readable.
        const std::optional<const draw::Path*>& room = on_plate_ ? cut_ : finished_;
        if (!room || !box_inside_rings((*room)->rings, box))
            faults_.push_back("'" + text.words + "' leaves its piece");
    }

    const draw::Picture& picture_;
    const draw::Letters& letters_;
    std::vector<const draw::Text*> texts_;
    std::vector<const draw::Circle*> rings_;
    std::vector<std::string> faults_;
    std::optional<const draw::Path*> finished_;
    std::optional<const draw::Path*> cut_;
    bool on_plate_ = false;
    std::optional<draw::Box> clip_;
    bool in_piece_ = false;
    std::size_t in_pieces_ = 0;
    std::size_t pieces_ = 0;
};

} // namespace pelt::test
