// SPDX-License-Identifier: MIT
// Where papers go.
#include "program.hpp"

#include <doctest/doctest.h>

using namespace pelt;
using cli_test::Program;

TEST_CASE("a PDF is not written to a terminal") {
    const Program pelt;
    const auto sheet = pelt.in_terminal({"cut", "van.yaml", "film.yaml", "--format", "pdf"});
    CHECK(sheet.status == 2);
    CHECK(sheet.output == "");
    CHECK(sheet.errors.find("a PDF is nothing for a terminal to show") != std::string::npos);
    CHECK(sheet.errors.find("--out sheet.pdf") != std::string::npos);
    const auto form = pelt.in_terminal({"list", "--form"});
    CHECK(form.status == 2);
    CHECK(form.output == "");
    // Into a file it may go from a terminal, and into a pipe it does.
    CHECK(pelt.in_terminal({"cut", "van.yaml", "film.yaml", "-o", "sheet.pdf"}).status == 0);
    CHECK(pelt.file("sheet.pdf").substr(0, 5) == "%PDF-");
    CHECK(pelt({"cut", "van.yaml", "film.yaml", "--format", "pdf"}).output ==
          pelt.file("sheet.pdf"));
}

TEST_CASE("a sheet and a drawing of one run, whole or not at all") {
    const Program pelt;
    const std::string before = pelt.shell("ls -A").output;
    const auto result =
        pelt({"cut", "van.yaml", "film.yaml", "-o", "sheet.pdf", "-o", "none/roll.svg"});
    CHECK(result.status == 4);
    CHECK(pelt.shell("ls -A").output == before);
}

TEST_CASE("without its font no PDF is made, and the message says what is missing") {
    Program pelt;
    pelt.folder().write("fonts.conf", "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM "
                                      "\"fonts.dtd\"><fontconfig></fontconfig>");
    pelt.environment["FONTCONFIG_FILE"] = pelt.folder().path() + "/fonts.conf";
    const auto result = pelt({"cut", "van.yaml", "film.yaml", "-o", "sheet.pdf"});
    CHECK(result.status == 4);
    CHECK(result.errors.find("DejaVu Sans is not installed") != std::string::npos);
    CHECK(result.errors.find("fonts-dejavu-core") != std::string::npos);
    CHECK(pelt({"cut", "van.yaml", "film.yaml"}).status == 0);
}
