// SPDX-License-Identifier: MIT
// Lengths and areas. Two representations, converted at two borders only:
//   Length   what a person wrote, exact to a picometre (read/, order/)
//   Um       whole micrometres, the grid on which pieces are cut and checked (from piece/ on)
// Between them (develop/, before the grid) lengths are doubles in millimetres, named *_mm.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace pelt {

/// A length on the grid, in whole micrometres.
using Um = std::int64_t;
inline constexpr Um um_per_mm = 1000;

__extension__ typedef __int128 Int128;
/// Twice an area, in square micrometres: the shoelace sum, hence always whole and exact.
using DoubleArea = Int128;

/// Twice-square-micrometres to square millimetres (rounded to the nearest double).
double to_mm2(DoubleArea doubled);

/// Units in which lengths are written. Factors by definition: 1 in = 25.4 mm, 1 ft = 12 in,
/// 1 yd = 3 ft (international yard, 24 FR 5348 of 1 July 1959).
enum class Unit { mm, cm, m, in, ft, yd };

std::string_view name_of(Unit unit);
std::optional<Unit> unit_named(std::string_view name);

/// An exact length. One count is a picometre, so every decimal of a millimetre down to 1e-9 and
/// every 1/128 in is exact; the range is about nine thousand kilometres.
class Length {
public:
    static constexpr std::int64_t pm_per_um = 1'000'000;

    constexpr Length() = default;
    static constexpr Length from_um(Um um) { return Length{um * pm_per_um}; }
    static constexpr Length from_mm(std::int64_t mm) { return from_um(mm * um_per_mm); }
    static constexpr Length from_pm(std::int64_t pm) { return Length{pm}; }

    constexpr std::int64_t pm() const { return pm_; }
    double mm() const { return static_cast<double>(pm_) / 1e9; }
    /// The grid length that is not shorter (not longer).
    Um ceil_um() const;
    Um floor_um() const;

    friend constexpr auto operator<=>(Length, Length) = default;
    friend constexpr Length operator+(Length a, Length b) { return Length{a.pm_ + b.pm_}; }
    friend constexpr Length operator-(Length a, Length b) { return Length{a.pm_ - b.pm_}; }
    friend constexpr Length operator*(std::int64_t n, Length a) { return Length{n * a.pm_}; }

private:
    constexpr explicit Length(std::int64_t pm) : pm_(pm) {}
    std::int64_t pm_ = 0;
};

/// The length of one unit, exactly.
Length length_of(Unit unit);

} // namespace pelt
