// SPDX-License-Identifier: MIT
// Every example of help and manual does what it says.
#include "cli/commands.hpp"
#include "program.hpp"

#include <doctest/doctest.h>

using namespace pelt;
using cli_test::Program;

TEST_CASE("every example succeeds and says nothing but warnings") {
    for (const cli::CommandRow& row : cli::commands())
        for (const cli::Example& example : row.works ? row.examples : std::vector<cli::Example>{}) {
            CAPTURE(example.line);
            const Program pelt;
            const auto result = pelt.shell(std::string(example.line));
            CHECK(result.status == 0);
            CHECK((result.output != "" || result.errors.find("wrote") != std::string::npos ||
                   example.line.find('>') != std::string::npos));
        }
}
