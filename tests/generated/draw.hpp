// SPDX-License-Identifier: MIT
// What the drawn jobs draw with: the dice, and texts put together in one order on every compiler.
#pragma once

#include "random_figures.hpp"

#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <vector>

namespace pelt::generated {

class Draw {
public:
    explicit Draw(std::uint64_t seed) : dice_(seed) {}

    /// From least to most, both of them too.
    int within(int least, int most) { return dice_.whole(least, most); }
    bool one_in(int n) { return within(1, n) == 1; }
    std::string of(std::initializer_list<const char*> texts) {
        return texts.begin()[within(0, static_cast<int>(texts.size()) - 1)];
    }
    template <class T>
    const T& of(const std::vector<T>& all) {
        return all[static_cast<std::size_t>(within(0, static_cast<int>(all.size()) - 1))];
    }

private:
    test::Dice dice_;
};

/// The texts one behind the other. A list between braces is worked out from left to right, which
/// the operands of `+` need not be: draws stand in such lists, so that one seed is one job.
std::string joined(std::initializer_list<std::string> texts);
std::string listed(const std::vector<std::string>& texts, const std::string& between = ", ");

/// Writes lengths, given in tenths of a millimetre, the way people write them.
class Pen {
public:
    Pen(Draw& draw, std::string unit) : draw_(draw), unit_(std::move(unit)) {}

    const std::string& unit() const { return unit_; }
    /// In the file's unit or, now and then, in one of its own. Inches are right to 0.003 mm.
    std::string length(int tenths);
    /// A bare number in the file's unit.
    std::string bare(int tenths) const;
    std::string point(int x, int y);
    /// As `length`, or the nearest eighth of an inch below.
    std::string rough(int tenths);

private:
    Draw& draw_;
    std::string unit_;
};

/// A length with its unit.
std::string in_unit(int tenths, const std::string& unit);
/// A drawn unit of vehicle, film and stock files; mostly millimetres.
std::string drawn_unit(Draw& draw);

} // namespace pelt::generated
