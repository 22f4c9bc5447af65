// SPDX-License-Identifier: MIT
// The words that choose edges of a panel. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/context.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::read {

/// Which words select an edge of a panel: `all`; numbers such as `2-3`, names, and top, bottom,
/// left, right (the outward normal of the chord within 45 degrees of that way in the drawing, ties
/// to top and bottom) for outlines; top, bottom, start, end for girths. On sides and tops also front
/// and rear, by the panel's forward.
class EdgeWords {
public:
    explicit EdgeWords(const Panel& panel);

    /// `front` and `rear` as the word for that edge in the panel's drawing; other words, and these
    /// where an edge has that name or no way is known to be forward, as they are.
    std::string in_the_drawing(const std::string& word) const;

    /// Tells a word that selects no edge, and which could be meant.
    void check(const std::string& word, const Place& place, Context& context) const;

private:
    struct Edge {
        std::string number;
        std::string name;
        std::string way; ///< top, bottom, left or right
        GridPoint normal;
    };

    void tell_front(const std::string& word, const Place& place, Context& context) const;
    void tell_pair(const std::string& word, const Place& place, Context& context) const;
    void tell_way(const std::string& word, const Place& place, Context& context) const;

    bool known_ = false; ///< the panel's form could be read
    bool girths_ = false;
    bool has_front_and_rear_ = true; ///< a side or a top, or not known
    std::optional<Heading> forward_;
    std::vector<Edge> edges_;
};

} // namespace pelt::read
