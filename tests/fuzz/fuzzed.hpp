// SPDX-License-Identifier: MIT
// What the fuzzers try: bytes go in, and whatever they are, what is promised of every input holds.
// The same functions run on the small files of corpus/ in every build.
#pragma once

#include "model/fault.hpp"

#include <span>
#include <stdexcept>
#include <string>
#include <string_view>

namespace pelt::fuzzed {

/// A promise that an input breaks.
struct Broken : std::logic_error {
    using std::logic_error::logic_error;
};

struct Target {
    std::string_view name;
    void (*run)(std::string_view bytes); ///< throws what nothing should throw, or Broken
};

/// One for each folder of corpus/.
std::span<const Target> targets();

/// Throws std::out_of_range for a target that is none.
void run(std::string_view target, std::string_view bytes);

void expect(bool holds, const std::string& promise);

/// Each is a sentence with a place or a remedy, in UTF-8, and nothing in it moves a terminal's
/// cursor.
void expect_sentences(const Faults& faults);

/// One text as it would be printed: UTF-8, and of control characters line ends alone.
void expect_printable(std::string_view text);

void vehicle(std::string_view bytes);
void table(std::string_view bytes);
void film(std::string_view bytes);
void stock(std::string_view bytes);
void shop(std::string_view bytes);
void jobs(std::string_view bytes);
void jobs_table(std::string_view bytes);
void log(std::string_view bytes);
void obj(std::string_view bytes);
void ply(std::string_view bytes);
void stl(std::string_view bytes);
void words(std::string_view bytes);
void whole(std::string_view bytes);

} // namespace pelt::fuzzed
