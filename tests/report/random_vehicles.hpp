// SPDX-License-Identifier: MIT
// Vehicle files made up at random, the same on every machine.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace pelt::test {

/// Knuth's 64-bit linear congruence (MMIX; from memory), its upper bits.
class Chance {
public:
    explicit Chance(std::uint64_t seed) : state_(seed * 2 + 1) {}
    /// From least to most, both of them too.
    int within(int least, int most) {
        state_ = state_ * 6364136223846793005U + 1442695040888963407U;
        return least + static_cast<int>((state_ >> 33) % static_cast<unsigned>(most - least + 1));
    }
    bool one_in(int n) { return within(1, n) == 1; }

private:
    std::uint64_t state_;
};

/// The text of every panel, without its name: two to nine of them, of every form.
inline std::vector<std::string> random_panels(Chance& chance) {
    const auto number = [&](int least, int most) {
        return std::to_string(chance.within(least, most));
    };
    const auto size = [&] {
        return "size: [" + number(60, 1900) + "." + number(0, 9) + ", " + number(60, 1300) + "]";
    };
    const auto outline = [&] {
        const std::string wide = number(300, 1600);
        const std::string high = number(200, 1100);
        return "outline: [[0, 0], [" + wide + ", " + number(0, 40) + "], {through: [" + wide +
               ", 90], to: [" + wide + ", 150]}, [" + number(160, 290) + ", " + high + "], {to: [" +
               number(0, 90) + ", " + high + "], name: top rail}]";
    };
    const auto girths = [&] {
        return "girths: [{at: 0, up: " + number(40, 200) + ", down: " + number(40, 200) +
               "}, {at: 700, up: " + number(60, 300) + ", down: " + number(60, 300) +
               "}, {at: " + number(900, 2400) + ", up: " + number(40, 200) +
               ", down: " + number(40, 200) + "}]";
    };
    std::vector<std::string> panels;
    const int count = chance.within(2, 9);
    for (int i = 0; i < count; ++i) {
        const int form = chance.within(1, 4);
        std::string text = form == 1 ? girths() : form == 2 ? outline() : size();
        if (form != 1 && chance.one_in(2))
            text += ", crown: {wide: " + number(0, 30) + ", high: " + number(0, 30) + "}";
        text += chance.one_in(3) ? ", sides: both"
                                 : ", forward: " + std::string(chance.one_in(2) ? "up" : "left");
        text +=
            chance.one_in(4) ? ", edges: none" : ", edges: {all: {wrap: " + number(0, 30) + "}}";
        if (chance.one_in(5))
            text += ", direction: any";
        if (chance.one_in(5))
            text += ", count: 2";
        if (chance.one_in(6))
            text += ", faces: 2";
        if (form == 3 && chance.one_in(2))
            text += ", openings: {hole: {outline: [[20, 20], [40, 20], [40, 40], [20, 40]]}}";
        panels.push_back(text);
    }
    return panels;
}

/// Panels as a vehicle file, called by `letter` and a number.
inline std::string vehicle_of(const std::vector<std::string>& panels, char letter) {
    std::string text = "vehicle: Random\npanels:\n";
    for (std::size_t i = 0; i < panels.size(); ++i)
        text += "  " + std::string(1, letter) + std::to_string(i) + ": {" + panels[i] + "}\n";
    return text;
}

} // namespace pelt::test
