// SPDX-License-Identifier: MIT
#include "case_file.hpp"

#include <cstdlib>
#include <sstream>
#include <stdexcept>

namespace pelt::cases {
namespace {

constexpr const char* marker = "== ";

[[noreturn]] void refuse(int line, const std::string& what) {
    throw std::runtime_error("line " + std::to_string(line) + ": " + what);
}

bool begins_with(const std::string& text, const std::string& start) {
    return text.compare(0, start.size(), start) == 0;
}

char escaped_byte(const std::string& text, std::size_t& at, int line) {
    switch (at < text.size() ? text[at] : '\0') {
    case 'n':
        return '\n';
    case 'r':
        return '\r';
    case 't':
        return '\t';
    case '\\':
        return '\\';
    case 'x':
        if (at + 2 >= text.size())
            break;
        at += 2;
        return static_cast<char>(std::strtoul(text.substr(at - 1, 2).c_str(), nullptr, 16));
    default:
        break;
    }
    refuse(line, "not an escape: \\" + text.substr(at, 3));
}

std::string bytes_of(const Section& section) {
    std::string out;
    for (std::size_t i = 0; i < section.body.size(); ++i) {
        if (section.body[i] == '\n')
            continue;
        out += section.body[i] == '\\' ? escaped_byte(section.body, ++i, section.line)
                                       : section.body[i];
    }
    return out;
}

void add_to_case(Case& into, const Section& section) {
    const std::string& words = section.words;
    if (begins_with(words, "file "))
        into.files.push_back({words.substr(5), section.body});
    else if (begins_with(words, "bytes "))
        into.files.push_back({words.substr(6), bytes_of(section)});
    else if (words == "run")
        into.script = section.body;
    else if (words == "output" || words == "output has")
        into.output = {section.body, words == "output"};
    else if (words == "errors" || words == "errors has")
        into.errors = {section.body, words == "errors"};
    else if (begins_with(words, "status "))
        into.status = std::atoi(words.c_str() + 7);
    else
        refuse(section.line, "no section is called '" + words + "'");
}

std::size_t section_of_case(const CaseFile& file, std::size_t index) {
    std::size_t seen = 0;
    for (std::size_t i = 0; i < file.sections.size(); ++i)
        if (begins_with(file.sections[i].words, "case ") && seen++ == index)
            return i;
    throw std::runtime_error("no such case");
}

/// The section of the case at `first` whose words begin so; `end` where there is none.
std::size_t find_in_case(const CaseFile& file, std::size_t first, const std::string& words,
                         std::size_t& end) {
    std::size_t found = file.sections.size();
    for (end = first + 1; end < file.sections.size(); ++end) {
        if (begins_with(file.sections[end].words, "case "))
            break;
        if (begins_with(file.sections[end].words, words))
            found = end;
    }
    return found == file.sections.size() ? end : found;
}

void set_section(CaseFile& file, std::size_t first, const std::string& name,
                 const std::string& words, const std::string& body, bool wanted) {
    std::size_t end = 0;
    const std::size_t at = find_in_case(file, first, name, end);
    const auto place = file.sections.begin() + static_cast<std::ptrdiff_t>(at);
    if (at != end && place->words == name + " has")
        return;
    if (at != end && !wanted)
        file.sections.erase(place);
    else if (at != end)
        *place = {words, body, place->line};
    else if (wanted)
        file.sections.insert(place, {words, body, 0});
}

} // namespace

CaseFile parse(const std::string& text) {
    CaseFile file;
    std::istringstream lines(text);
    std::string line;
    for (int number = 1; std::getline(lines, line); ++number) {
        if (begins_with(line, marker))
            file.sections.push_back({line.substr(3), "", number});
        else
            (file.sections.empty() ? file.preamble : file.sections.back().body) += line + "\n";
    }
    return file;
}

std::vector<Case> cases_of(const CaseFile& file) {
    Case shared;
    std::vector<Case> cases;
    for (const Section& section : file.sections) {
        if (begins_with(section.words, "case ")) {
            Case fresh;
            fresh.title = section.words.substr(5);
            fresh.line = section.line;
            fresh.files = shared.files;
            cases.push_back(std::move(fresh));
        } else if (cases.empty() && !begins_with(section.words, "file ") &&
                   !begins_with(section.words, "bytes ")) {
            refuse(section.line, "only files stand before the first case");
        } else {
            add_to_case(cases.empty() ? shared : cases.back(), section);
        }
    }
    for (const Case& one : cases)
        if (one.script.empty())
            refuse(one.line, "the case runs nothing");
    if (cases.empty())
        refuse(1, "there is no case");
    return cases;
}

std::string to_text(const CaseFile& file) {
    std::string text = file.preamble;
    for (const Section& section : file.sections)
        text += marker + section.words + "\n" + section.body;
    return text;
}

void accept(CaseFile& file, std::size_t index, const std::string& output, const std::string& errors,
            int status) {
    const std::size_t first = section_of_case(file, index);
    set_section(file, first, "output", "output", output, !output.empty());
    set_section(file, first, "errors", "errors", errors, !errors.empty());
    set_section(file, first, "status", "status " + std::to_string(status), "", status != 0);
}

} // namespace pelt::cases
