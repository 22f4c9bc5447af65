// SPDX-License-Identifier: MIT
// Runs the cases of one text file: pelt_cases [--accept] PELT VERSION FILE.
#include "case_file.hpp"
#include "process.hpp"

#include <exception>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

namespace pelt::cases {
namespace {

struct Setting {
    std::string program;
    std::string version;
};

std::string replaced(std::string text, const std::string& what, const std::string& by) {
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at))
        text.replace(at, what.size(), by), at += by.size();
    return text;
}

support::Result result_of(const Case& one, const Setting& setting) {
    const support::ScratchFolder folder;
    for (const InputFile& file : one.files)
        folder.write(file.name, file.bytes);
    const std::string programs =
        std::filesystem::absolute(setting.program).parent_path().string() + ":/usr/bin:/bin";
    return support::run({.words = {"/bin/sh", "-c", one.script},
                         .folder = folder.path(),
                         .environment = {{"PATH", programs},
                                         {"LC_ALL", "C"},
                                         {"TZ", "UTC"},
                                         {"TERM", "dumb"},
                                         {"HOME", folder.path()}}});
}

/// The first line of `wanted` that is in no line of `text` behind the one before; empty: none.
std::string first_missing(const std::string& wanted, const std::string& text) {
    std::istringstream lines(wanted);
    std::string line;
    std::size_t at = 0;
    while (std::getline(lines, line)) {
        at = text.find(line, at);
        if (at == std::string::npos)
            return line.empty() ? "(an empty line)" : line;
        at += line.size();
    }
    return "";
}

void show(const std::string& what, const std::string& text) {
    std::cout << "  --- " << what << "\n" << text;
    if (!text.empty() && text.back() != '\n')
        std::cout << "\n  (no newline at the end)\n";
}

bool matches(const Expected& expected, const std::string& got, const std::string& stream,
             const Setting& setting) {
    const std::string wanted = replaced(expected.text, "@VERSION@", setting.version);
    if (expected.exact && wanted == got)
        return true;
    const std::string missing = expected.exact ? "" : first_missing(wanted, got);
    if (!expected.exact && missing.empty())
        return true;
    show("expected on " + stream + (expected.exact ? "" : " (among other lines)"), wanted);
    show("got", got);
    if (!expected.exact)
        show("missing", missing + "\n");
    return false;
}

bool passes(const Case& one, const support::Result& got, const Setting& setting) {
    std::cout << "case " << one.title << " (line " << one.line << ")\n";
    const bool output = matches(one.output, got.output, "standard output", setting);
    const bool errors = matches(one.errors, got.errors, "standard error", setting);
    if (got.status != one.status)
        std::cout << "  --- expected status " << one.status << ", got " << got.status << "\n";
    return output && errors && got.status == one.status;
}

int run_file(const std::string& path, const Setting& setting, bool accepts) {
    CaseFile file = parse(support::contents_of(path));
    const std::vector<Case> cases = cases_of(file);
    int failures = 0;
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const support::Result got = result_of(cases[i], setting);
        if (passes(cases[i], got, setting))
            continue;
        ++failures;
        if (accepts)
            accept(file, i, got.output, got.errors, got.status);
    }
    std::cout << cases.size() << " cases, " << failures << " failures\n";
    if (accepts)
        std::ofstream(path, std::ios::binary) << to_text(file);
    return failures == 0 || accepts ? 0 : 1;
}

} // namespace
} // namespace pelt::cases

int main(int argc, char** argv) {
    std::vector<std::string> words(argv + 1, argv + argc);
    const bool accepts = !words.empty() && words.front() == "--accept";
    if (accepts)
        words.erase(words.begin());
    if (words.size() != 3) {
        std::cerr << "usage: pelt_cases [--accept] PELT VERSION FILE\n";
        return 2;
    }
    try {
        return pelt::cases::run_file(words[2], {words[0], words[1]}, accepts);
    } catch (const std::exception& error) {
        std::cerr << words[2] << ": " << error.what() << '\n';
        return 2;
    }
}
