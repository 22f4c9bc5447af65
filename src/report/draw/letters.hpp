// SPDX-License-Identifier: MIT
// How much room letters take.
#pragma once

#include <string_view>

namespace pelt::report::draw {

enum class Face { plain, bold };

/// Digits and capitals stand so high, small letters descend so far, of a text's size.
inline constexpr double capital_height = 0.73;
inline constexpr double descent = 0.24;

class Letters {
public:
    virtual ~Letters() = default;
    /// How wide a text of size 1 is.
    virtual double width_em(std::string_view text, Face face) const = 0;
    double width(std::string_view text, double size, Face face = Face::plain) const {
        return size * width_em(text, face);
    }
};

/// For a drawing whose reader chooses the font: at least as wide as DejaVu Sans, which is wide
/// among the usual sans-serif fonts.
class UnknownLetters : public Letters {
public:
    double width_em(std::string_view text, Face face) const override;
};

} // namespace pelt::report::draw
