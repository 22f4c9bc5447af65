// SPDX-License-Identifier: MIT
// Files whose names hold what a terminal obeys: it never gets there.
#include "cli/program.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pelt;
using cli_test::Program;

namespace {

const std::string odd = "a\033[31mb\nc\x9b\x7f";

bool reaches_the_terminal(const std::string& text) {
    return std::any_of(text.begin(), text.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return (byte < 0x20 && byte != '\n' && byte != '\r') || byte == 0x7f;
    });
}

} // namespace

TEST_CASE("no name of a file brings a control character into any output or message") {
    const Program pelt;
    const std::string van = odd + ".yaml";
    const std::string film = odd + "-film.yaml";
    pelt.folder().write(van, cli_test::small_van);
    pelt.folder().write(film, cli_test::small_film);
    pelt.folder().write(odd + "-wrong.yaml", "vehicle: x\npanels: {a: {sze: 1}}\n");
    pelt.folder().write(odd + "-many.yaml", "vehicle: x\n" + std::string(200, ' ') + "\n");
    pelt.folder().write(odd + "-jobs.yaml", "jobs: [{job: one, vehicle: van.yaml, film: none}]\n");
    pelt.folder().write(odd + "-shop.yaml", "shop: Corner\nrate: -50\n");
    pelt.folder().write(odd + "-stock.yaml", "stock: [{id: A, film: F, width: 1, length: 2}]\n");
    const std::vector<std::vector<std::string>> runs{
        {"check", van},
        {"check", film},
        {"check", odd + "-wrong.yaml"},
        {"check", odd + "-many.yaml"},
        {"check", odd + "-jobs.yaml"},
        {"check", odd + "-shop.yaml"},
        {"check", odd + "-none.yaml"},
        {"cut", van, film, "-o", odd + ".txt"},
        {"cut", van, film, "-o", odd + "/none/x.txt"},
        {"cut", van, film, "-o", van},
        {"cut", van, film, "-o", "sheet." + odd},
        {"cut", van, film, "-v"},
        {"cut", van, film, "--format", "json"},
        {"cut", van, film, "--format", "csv"},
        {"cut", van, film, "--format", "svg"},
        {"cut", van, film, "--format", "markdown"},
        {"cut", van, film, "--stock", odd + "-stock.yaml"},
        {"cut", film, van},
        {"cut", odd, film},
        {"area", van, film},
        {"area", van, film, "--format", "json"},
        {"compare", van, film, "film.yaml"},
        {"strip", van},
        {"quote", odd + "-jobs.yaml", "--shop", "shop.yaml"},
        {"quote", "jobs.yaml", "--shop", odd + "-shop.yaml"},
        {"list", odd},
    };
    for (const std::vector<std::string>& words : runs) {
        CAPTURE(words[0]);
        CAPTURE(words[1]);
        const support::Result result = pelt(words);
        CAPTURE(result.output);
        CAPTURE(result.errors);
        CHECK_FALSE(reaches_the_terminal(result.output));
        CHECK_FALSE(reaches_the_terminal(result.errors));
        CHECK(result.status <= 4);
        for (const std::string& text : {result.output, result.errors})
            CHECK(text.find("b\nc") == std::string::npos);
    }
}

TEST_CASE("lists of what is installed show odd names with their control characters replaced") {
    Program pelt;
    pelt.environment["XDG_DATA_HOME"] = pelt.folder().path() + "/data\033[7m";
    pelt.folder().write("data\033[7m/pelt/vehicles/" + odd + ".yaml", cli_test::small_van);
    pelt.folder().write("data\033[7m/pelt/films/" + odd + ".yaml", "film: wrong\n");
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"list"}, {"list", "--names"}, {"cut", "no", "no"}}) {
        const support::Result result = pelt(words);
        CAPTURE(result.output + result.errors);
        CHECK(result.output.find('\033') == std::string::npos);
        CHECK(result.errors.find('\033') == std::string::npos);
        CHECK((result.output + result.errors).find("b\nc") == std::string::npos);
    }
    CHECK(pelt({"list"}).output.find("a?[31mb?c") != std::string::npos);
}
