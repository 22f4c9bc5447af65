// SPDX-License-Identifier: MIT
// How plain text is laid out.
#pragma once

namespace pelt::report {

struct TextStyle {
    int width = 80;     ///< columns; kept within 60 … 120
    bool ascii = false; ///< our own signs (×, ², °, arrows, dashes) spelt in ASCII; names stay
    bool on_a_terminal = false; ///< drawings made of characters, and the order once more at the end
    bool colour = false;        ///< in drawings, by the escape sequences of ECMA-48 (SGR)
};

} // namespace pelt::report
