// SPDX-License-Identifier: MIT
// Numbers as people read them, with one rule for each kind. Rounding is done on whole numbers, so
// a half never depends on a binary fraction.
//   sizes, positions, what is bought or needed   up
//   what is left over, what is proved least      down
//   areas, percentages                           to the nearest, a half away from zero; where a
//                                                table adds them up, so that they add up as printed
//   money                                        never
#pragma once

#include "model/blank.hpp"
#include "model/length.hpp"
#include "model/money.hpp"

#include <optional>
#include <string>

namespace pelt::report {

enum class Rounding { up, down };

/// Lengths and areas in one system of units. Sizes are in the unit itself for mm (whole), cm (0.1)
/// and m (0.001), in eighths of an inch for in, ft and yd, as the tape has them. Lengths of film
/// are in m (0.001) for the metric units, in inches (eighths), feet or yards (0.01) for the others.
class Measures {
public:
    explicit Measures(Unit unit) : unit_(unit) {}

    Unit unit() const { return unit_; }

    /// The step to which sizes are rounded.
    Um size_step() const;
    /// "mm", "cm", "m" or "in".
    std::string size_unit() const;
    std::string size_unit_in_words() const;
    /// "millimeters, rounded up to whole ones": how sizes are given, in words.
    std::string sizes_in_words() const;
    /// Number alone: "1480", "148.0", "1.480", "58 3/8".
    std::string size(Um um, Rounding rounding = Rounding::up) const;
    /// With its unit: "1480 mm", "58 3/8 in".
    std::string size_with_unit(Um um, Rounding rounding = Rounding::up) const;
    /// "1480 × 690", along the roll first.
    std::string sides(Um along, Um across) const;

    std::string film_unit() const;
    /// Between two running distances on a drawing: a metre or a yard.
    Um tick() const;
    /// "14.211 m", "15 m", "46.63 ft".
    std::string film(Length length, Rounding rounding = Rounding::up) const;
    std::string film(Um um, Rounding rounding = Rounding::up) const;
    /// A length that is sold, never rounded where it is whole in some unit: "1 ft" among metres.
    std::string as_sold(Length length) const;

    /// "21.66 m²", "233.15 sq ft".
    std::string area(DoubleArea doubled) const;
    /// Number alone, for columns: "1.204", "12.96"; finer in metric, where the unit is large.
    std::string area_number(DoubleArea doubled) const;
    std::string area_unit() const;

    /// The step of `area`: twice an area times `times`, over `over`, is the area in such steps.
    struct AreaStep {
        Int128 times;
        Int128 over;
    };
    AreaStep area_step() const;
    /// So many of them, as `area` writes them.
    std::string area_of_steps(Int128 steps) const;

private:
    bool metric() const { return unit_ == Unit::mm || unit_ == Unit::cm || unit_ == Unit::m; }
    Unit unit_;
};

/// "21.4 %" of part / whole, whole > 0.
std::string percent(Int128 part, Int128 whole);
/// So many tenths of a percent, written the same way.
std::string percent_of_tenths(Int128 tenths);
/// A percentage that was never exact: "9 %", "9.5 %".
std::string percent(double value);

/// "14.20 EUR".
std::string money(Money amount, int digits, const std::string& currency);

/// "not checked" when unknown, "about 9 %" for an estimate, else "9 %".
std::string stretch_text(const StretchAsked& stretch);

/// "1 piece", "4 pieces".
std::string counted(std::int64_t count, const std::string& one, const std::string& many);

} // namespace pelt::report
