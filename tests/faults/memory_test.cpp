// SPDX-License-Identifier: MIT
// Memory that is refused at any allocation of the whole program: status 5 and a sentence of its
// own, or the same as ever; never death by a signal. Papers and drawings are not asked of it: Pango
// and GLib end a process themselves when they get none.
#include "cli/program.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <string>
#include <vector>

using namespace pelt;
using cli_test::Program;

namespace {

constexpr int failed = 5;

struct Preloaded : Program {
    Preloaded() { environment["LD_PRELOAD"] = PELT_FAILING_MALLOC; }
};

long allocations_of(const std::vector<std::string>& words) {
    Preloaded pelt;
    pelt.environment["FAIL_COUNT"] = "yes";
    const std::string errors = pelt(words).errors;
    const std::string told = "allocations ";
    const std::size_t at = errors.rfind(told);
    REQUIRE(at != std::string::npos);
    return std::strtol(errors.c_str() + at + told.size(), nullptr, 10);
}

/// At so many allocations, spread over all of the run; a run that is given up says why.
void is_given_up_with_a_sentence(const std::vector<std::string>& words, int places) {
    const support::Result right = Program()(words);
    const long all = allocations_of(words);
    REQUIRE(all > 100);
    int given_up = 0;
    for (int place = 0; place < places; ++place)
        for (const bool goes_on : {false, true}) {
            Preloaded pelt;
            const long at = 1 + all * place / places + place % 3;
            pelt.environment["FAIL_AT"] = std::to_string(at);
            if (goes_on)
                pelt.environment["FAIL_ON"] = "yes";
            CAPTURE(words[0]);
            CAPTURE(at);
            CAPTURE(goes_on);
            const support::Result result = pelt(words);
            CAPTURE(result.errors);
            if (result.status == failed)
                CHECK(result.errors.find("memory ran out") != std::string::npos);
            else if (result.status == right.status)
                CHECK(result.output == right.output);
            else // a file that could not be looked at: told as such, never half a result
                CHECK((result.status < failed && result.output.empty() && !result.errors.empty()));
            given_up += result.status == failed ? 1 : 0;
        }
    CHECK(given_up > places / 2);
}

} // namespace

TEST_CASE("memory refused at any moment of reading: status 5 and a sentence") {
    is_given_up_with_a_sentence({"check", "van.yaml", "film.yaml"}, 24);
}

TEST_CASE("memory refused while a folder is gone through, or the command line taken apart") {
    is_given_up_with_a_sentence({"list", "--names"}, 24);
    is_given_up_with_a_sentence({"--help"}, 12);
}

TEST_CASE("memory refused at any moment of a search: status 5 and a sentence") {
    is_given_up_with_a_sentence({"cut", "van.yaml", "film.yaml", "-q", "--effort", "1", "--threads",
                                 "2", "--format", "csv"},
                                20);
}
