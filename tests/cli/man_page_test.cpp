// SPDX-License-Identifier: MIT
#include "cli/man_page.hpp"
#include "model/error.hpp"

#include <doctest/doctest.h>

using namespace pelt;
using namespace pelt::cli;

TEST_CASE("days since 1970 become dates, over leap days and centuries") {
    // The first, RFC 3339's era start; the others by `date -u -d @N +%F` of GNU coreutils.
    CHECK(iso_date(0) == "1970-01-01");
    CHECK(iso_date(951'782'400) == "2000-02-29");
    CHECK(iso_date(951'782'399) == "2000-02-28");
    CHECK(iso_date(4'107'542'400) == "2100-03-01");
    CHECK(iso_date(1'764'028'800) == "2025-11-25");
}

TEST_CASE("dates are written as mdoc(7) wants them") {
    CHECK(mdoc_date("2025-11-05") == "November 5, 2025");
    CHECK_THROWS_AS(mdoc_date("2025-13-05"), ProgramError);
    CHECK_THROWS_AS(mdoc_date("tomorrow"), ProgramError);
}

TEST_CASE("text is escaped so that mdoc prints it as it is") {
    CHECK(escaped("a-b --in-order - c") == "a-b \\-\\-in\\-order \\- c");
    CHECK(escaped(".Sh at the start\n'and here") == "\\&.Sh at the start\n\\&'and here");
    CHECK(escaped("back\\slash") == "back\\eslash");
    CHECK(sentences("One. Two? Three, e.g.four.") == "One.\nTwo?\nThree, e.g.four.");
}

TEST_CASE("a template is filled in whole or not at all") {
    CHECK(filled("a @X@ b\n@Y@\n", {{"X", "1"}, {"Y", "2\n"}}) == "a 1 b\n2\n");
    CHECK_THROWS_AS(filled("@Z@", {{"X", "1"}}), ProgramError);
    CHECK_THROWS_AS(filled("none", {{"X", "1"}}), ProgramError);
}
