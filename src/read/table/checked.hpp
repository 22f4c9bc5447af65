// SPDX-License-Identifier: MIT
// What all tables are checked for, and places in them. Inside read/ only.
#pragma once

#include "read/context.hpp"
#include "read/table/layout.hpp"

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>

namespace pelt::read {

/// A place of a table: row and column counted from 0.
Place cell_at(const std::shared_ptr<const Source>& source, std::size_t row, std::size_t column);

/// True where every cell is a line of UTF-8 text; else that has been told.
bool is_text(const std::shared_ptr<const Source>& source, const Cells& cells, Context& context);

/// True where the table could not be followed to its end, which has then been told.
bool tell_broken(const std::shared_ptr<const Source>& source, const Cells& cells, Context& context);

/// The rows before the one that is broken.
std::size_t whole_rows(const Cells& cells);

bool is_blank(const Row& row);

/// A row above the headings begins with a word that may not stand there. Where the row is parted by
/// another mark than the headings are, that is the remedy.
void tell_no_head_word(const std::shared_ptr<const Source>& source, const Layout& layout,
                       std::size_t row, const std::string& remedy, Context& context);

/// The text of a cell. Our own lists put an apostrophe before texts that a spreadsheet would run
/// as a formula.
std::string text_of_cell(std::string_view cell);

} // namespace pelt::read
