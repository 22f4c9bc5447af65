// SPDX-License-Identifier: MIT
// All that goes to standard error: faults, warnings, notes, and what was done.
#pragma once

#include "model/fault.hpp"

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

namespace pelt::cli {

/// How much to say.
struct Loudness {
    bool quiet = false; ///< only errors
    int verbose = 0;    ///< 1: notes too; 2: the developer's log too
};

class Messages {
public:
    using Sink = std::function<void(std::string_view)>;

    /// `unit`: of lengths in sentences.
    Messages(Sink sink, Loudness loudness, bool colour, Unit unit = Unit::mm);

    /// A fault as `file:line:column: panel 'NAME': what; remedy`, with the line and a caret below;
    /// "pelt:" stands where there is no file. Warnings say that they are some. Quiet drops
    /// warnings, notes are shown when verbose.
    void tell(const Fault& fault) const;
    /// What several panels have in common is told as one.
    void tell(const Faults& faults) const;
    /// "FILE: and N more" for faults beyond those that are listed.
    void tell_unlisted(const std::string& file, std::size_t count) const;
    /// One line on what was done; dropped when quiet.
    void say(std::string_view line) const;

    const Loudness& loudness() const { return loudness_; }

private:
    bool shows(Severity severity) const;

    Sink sink_;
    Loudness loudness_;
    bool colour_;
    Unit unit_;
};

/// Writes to standard error; nothing can be done when that fails.
void to_standard_error(std::string_view text);

} // namespace pelt::cli
