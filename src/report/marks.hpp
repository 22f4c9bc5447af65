// SPDX-License-Identifier: MIT
// A mark is something that a person must decide or do differently before cutting this job: one
// sentence of at most a hundred characters, the panel first, the remedy last.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace pelt::report {

/// What is to be decided about one panel, or about the job.
struct Mark {
    std::string panel; ///< empty: about the job
    std::string own;   ///< what is this panel's alone, an edge or a figure; empty: nothing
    std::string what;
    std::string remedy; ///< empty: what is to be done goes without saying
    friend bool operator==(const Mark&, const Mark&) = default;
};

inline constexpr std::size_t longest_mark = 100;

/// Panels of which the same is to be decided, with one remedy.
struct GatheredMark {
    std::vector<std::string> panels; ///< each once; none: about the job
    std::vector<std::string> with_own; ///< the same with what is each one's alone in brackets
    std::string what;
    std::string remedy;

    /// "what; remedy."
    std::string text() const;
    /// The sentence, with as much of the panels as there is room for.
    std::string sentence() const;
    /// Whether the sentence names all panels.
    bool names_all() const;
};

/// In the order of the first of each.
std::vector<GatheredMark> gathered(const std::vector<Mark>& marks);

/// The text with a capital in front.
std::string capitalised(std::string text);

} // namespace pelt::report
