// SPDX-License-Identifier: MIT
// What the README shows is true: its commands run, its files are right.
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <sstream>
#include <string>
#include <vector>

namespace pelt::data_test {
namespace {

constexpr const char* indent = "    ";

bool begins(const std::string& line, const std::string& with) {
    return line.compare(0, with.size(), with) == 0;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

/// The indented lines that begin with `$ `, without it.
std::vector<std::string> commands_of(const std::string& readme) {
    const std::string prompt = std::string(indent) + "$ ";
    std::vector<std::string> commands;
    for (const std::string& line : lines_of(readme))
        if (begins(line, prompt))
            commands.push_back(line.substr(prompt.size()));
    return commands;
}

/// The indented blocks whose first line begins with `word`, without the indent.
std::vector<std::string> blocks_of(const std::string& readme, const std::string& word) {
    std::vector<std::string> blocks;
    bool inside = false;
    bool after_indented = false;
    for (const std::string& line : lines_of(readme)) {
        const bool indented = begins(line, indent);
        if (indented && !after_indented && begins(line.substr(4), word)) {
            blocks.emplace_back();
            inside = true;
        }
        inside = inside && indented;
        if (inside)
            blocks.back() += line.substr(4) + "\n";
        after_indented = indented;
    }
    return blocks;
}

TEST_CASE("the drawing of what was measured is the one that the program makes") {
    CHECK(pelt({"check", "examples/measuring.yaml", "-q", "-o", "-"}).output ==
          text_of("examples/measuring.svg"));
}

TEST_CASE("every command that the README shows runs, and prints something") {
    const std::vector<std::string> commands = commands_of(text_of("README.md"));
    REQUIRE(commands.size() >= 10);
    for (const std::string& command : commands) {
        CAPTURE(command);
        CHECK(begins(command, "pelt "));
        const support::Result result = shell(command);
        INFO(result.errors);
        CHECK(result.status == 0);
        CHECK(result.output.size() > 20);
    }
}

TEST_CASE("the sheet and the drawing that the README points to are what is printed") {
    const support::Result sheet =
        shell("pelt cut town-hatchback satin-hybrid --only top,mirrors -q");
    CHECK(sheet.output == text_of("examples/sheet.txt"));
    const support::Result roll =
        shell("pelt cut town-hatchback satin-hybrid --only top,mirrors -q --format svg");
    CHECK(roll.output == text_of("examples/roll.svg"));
}

TEST_CASE("the small files that the README shows are right") {
    for (const char* word : {"vehicle: ", "film: "}) {
        CAPTURE(word);
        const std::vector<std::string> blocks = blocks_of(text_of("README.md"), word);
        REQUIRE(blocks.size() == 1);
        const support::ScratchFolder folder;
        folder.write("shown.yaml", blocks.front());
        const support::Result result = pelt({"check", folder.path() + "/shown.yaml"});
        INFO(result.errors);
        CHECK(result.status == 0);
    }
}

} // namespace
} // namespace pelt::data_test
