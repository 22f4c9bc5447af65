// SPDX-License-Identifier: MIT
// A page as a list of blocks, so that every people's format says the same things in the same order.
#pragma once

#include "report/roll_text.hpp"
#include "report/text_style.hpp"
#include "report/text_table.hpp"

#include <string>
#include <variant>
#include <vector>

namespace pelt::report {

struct Title {
    std::string text;
    std::string right; ///< set against the right margin, e.g. DEMONSTRATION
};
struct Heading {
    std::string text;
};
/// Words to be seen from a metre away.
struct Big {
    std::vector<std::string> texts;
};
struct Line {
    std::string text;
};
/// `mark` is "!" for what needs a decision, "-" for what is merely said.
struct Items {
    std::string mark;
    std::vector<std::string> texts;
};

/// Drawings of rolls are for terminals: other formats have their own.
using Block = std::variant<Title, Heading, Big, Line, Items, Table, RollSketch>;
using Document = std::vector<Block>;

std::string to_text(const Document& document, const TextStyle& style);
std::string to_markdown(const Document& document);

} // namespace pelt::report
