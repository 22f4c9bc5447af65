// SPDX-License-Identifier: MIT
// What the parser's events do not tell, looked up in the text; and the rule that no key stands
// twice. Inside read/ only.
#pragma once

#include "model/fault.hpp"
#include "read/yaml.hpp"

#include <cstddef>
#include <memory>
#include <string_view>

namespace pelt::read {

/// Turns the bytes of an advancing parser into lines and columns, in linear time altogether.
class Cursor {
public:
    explicit Cursor(std::shared_ptr<const Source> source) : source_(std::move(source)) {}
    Place at(std::size_t byte);

private:
    std::shared_ptr<const Source> source_;
    std::size_t byte_ = 0;
    int line_ = 1;
    int column_ = 1;
};

/// True when the quote at `byte` is closed before the line ends.
bool closes_on_its_line(std::string_view text, std::size_t byte);

/// True for a key written as `? key`; the parser tells it like any other.
bool is_marked_key(std::string_view text, std::size_t byte);

/// Keeps the first of the entries with one key and tells the others.
void drop_repeated_keys(Node& map, Faults& faults);

} // namespace pelt::read
