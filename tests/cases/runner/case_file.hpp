// SPDX-License-Identifier: MIT
// The text files of tests/cases (tests/cases/README describes them).
#pragma once

#include <string>
#include <vector>

namespace pelt::cases {

/// A line "== WORDS" and the text below it.
struct Section {
    std::string words;
    std::string body; ///< whole lines, or empty
    int line = 0;     ///< of its header, from 1
};

struct CaseFile {
    std::string preamble;
    std::vector<Section> sections; ///< in the file's order
};

/// A file that is laid out before a case runs.
struct InputFile {
    std::string name;
    std::string bytes;
};

struct Expected {
    std::string text;
    bool exact = true; ///< false: "has"
};

struct Case {
    std::string title;
    int line = 0;
    std::vector<InputFile> files; ///< the shared ones first
    std::string script;
    Expected output;
    Expected errors;
    int status = 0;
};

/// Throws std::runtime_error with the line for what is no such file.
CaseFile parse(const std::string& text);
std::vector<Case> cases_of(const CaseFile& file);
std::string to_text(const CaseFile& file);

/// The file with what came out of its case number `index` in place of what was expected exactly.
void accept(CaseFile& file, std::size_t index, const std::string& output, const std::string& errors,
            int status);

} // namespace pelt::cases
