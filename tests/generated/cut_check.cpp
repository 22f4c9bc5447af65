// SPDX-License-Identifier: MIT
// The cuts of a roll, made one after the other: each goes through one part from edge to edge.
#include "trial.hpp"

#include <algorithm>

namespace pelt::generated {
namespace {

using nlohmann::json;

struct Part {
    std::int64_t left = 0, right = 0, low = 0, high = 0;
    bool operator==(const Part&) const = default;
};

struct Knife {
    std::int64_t x1 = 0, y1 = 0, x2 = 0, y2 = 0;
    bool across() const { return x1 == x2; }
};

Knife knife_of(const json& cut) {
    const json& from = cut["from_mm"];
    const json& to = cut["to_mm"];
    return {std::min(um(from[0]), um(to[0])), std::min(um(from[1]), um(to[1])),
            std::max(um(from[0]), um(to[0])), std::max(um(from[1]), um(to[1]))};
}

bool goes_through(const Knife& knife, const Part& part) {
    return knife.across() ? knife.x1 > part.left && knife.x1 < part.right && knife.y1 == part.low &&
                                knife.y2 == part.high
                          : knife.y1 == knife.y2 && knife.y1 > part.low && knife.y1 < part.high &&
                                knife.x1 == part.left && knife.x2 == part.right;
}

} // namespace

void check_cuts(const json& roll, Complaints& out) {
    constexpr std::int64_t no_end = INT64_MAX;
    std::vector<Part> parts{{0, no_end, 0, um(roll["width_mm"])}};
    for (const json& cut : roll["cuts"]) {
        const Knife knife = knife_of(cut);
        const auto part = std::find_if(parts.begin(), parts.end(),
                                       [&](const Part& p) { return goes_through(knife, p); });
        if (part == parts.end()) {
            out.emplace_back("a cut does not go from edge to edge of one part");
            return;
        }
        Part rest = *part;
        if (knife.across()) {
            part->right = knife.x1;
            rest.left = knife.x1;
        } else {
            part->high = knife.y1;
            rest.low = knife.y1;
        }
        parts.push_back(rest);
    }
    for (const json& piece : roll["pieces"]) {
        const std::int64_t x = um(piece["at_mm"][0]);
        const std::int64_t y = um(piece["at_mm"][1]);
        const Part wanted{x, x + um(piece["size_mm"][0]), y, y + um(piece["size_mm"][1])};
        if (std::find(parts.begin(), parts.end(), wanted) == parts.end())
            out.push_back("the cuts do not free piece " + piece["number"].dump());
    }
}

} // namespace pelt::generated
