// SPDX-License-Identifier: MIT
#include "cli/parse.hpp"

#include <doctest/doctest.h>

using namespace pelt;
using namespace pelt::cli;
using Words = std::vector<std::string>;

namespace {

Arguments right(const Words& words) {
    Faults faults;
    Arguments arguments = parse(words, faults);
    for (const Fault& fault : faults)
        MESSAGE(fault.what);
    CHECK(faults.empty());
    return arguments;
}

} // namespace

TEST_CASE("options stand before, between and after operands") {
    const Arguments a = right({"-q", "cut", "--times", "2", "a.yaml", "-v", "b.yaml", "--seed=3"});
    REQUIRE(a.command.has_value());
    CHECK(*a.command == Command::cut);
    CHECK(a.operands == Words{"a.yaml", "b.yaml"});
    CHECK(a.value(Opt::times) == "2");
    CHECK(a.value(Opt::seed) == "3");
    CHECK(a.count(Opt::quiet) == 1);
    CHECK(a.count(Opt::verbose) == 1);
}

TEST_CASE("letters are grouped, and take their value with or without a blank") {
    const Arguments a = right({"cut", "-vqv", "-ox.json", "-vo", "y.json", "a", "b"});
    CHECK(a.count(Opt::verbose) == 3);
    CHECK(a.count(Opt::quiet) == 1);
    CHECK(a.values.at(Opt::out) == Words{"x.json", "y.json"});
    CHECK(a.operands == Words{"a", "b"});
}

TEST_CASE("two dashes end the options, one dash is an operand") {
    const Arguments a = right({"cut", "-", "--", "--only"});
    CHECK(a.operands == Words{"-", "--only"});
    CHECK(right({"check", "--", "-", "--", "-q"}).operands == Words{"-", "--", "-q"});
    CHECK(*right({"--", "check", "x"}).command == Command::check);
}

TEST_CASE("operands are taken as they are") {
    const Words odd{"cut", "list", "[a,b]", "{}", "++", "%%", "a=b", "a b", "\xff"};
    CHECK(right({odd.begin(), odd.end()}).operands == Words{odd.begin() + 1, odd.end()});
}

TEST_CASE("values are taken as they are") {
    const Arguments a = right({"cut", "a", "b", "--only", "[x,y]", "--without=--times", "-o", "-"});
    CHECK(a.names(Opt::only) == Words{"[x", "y]"});
    CHECK(a.names(Opt::without) == Words{"--times"});
    CHECK(a.value(Opt::out) == "-");
    CHECK(right({"cut", "a", "b", "--only", "-", "--leave", "-x-"}).names(Opt::leave) ==
          Words{"-x-"});
}

TEST_CASE("names of all times are put together") {
    const Arguments a = right({"cut", "a", "b", "--only", "hood, roof", "--only=door/left"});
    CHECK(a.names(Opt::only) == Words{"hood", "roof", "door/left"});
}

TEST_CASE("what is not said is what holds without it") {
    const Arguments a = right({"cut", "a", "b"});
    CHECK(a.value_or_initial(Opt::by) == "straight");
    CHECK_FALSE(a.value(Opt::by).has_value());
    CHECK(a.names(Opt::only).empty());
}

TEST_CASE("help and version are answered whatever else is wrong") {
    for (const Words& words : {Words{"--help"}, Words{"cut", "--help"},
                               Words{"cut", "--bogus", "-h"}, Words{"nonsense", "--help"},
                               Words{"cut", "--times", "x", "--help"}, Words{"-vqh", "cut"}}) {
        CAPTURE(words.back());
        CHECK(right(words).count(Opt::help) == 1);
    }
    CHECK(right({"cut", "-V"}).count(Opt::version) == 1);
    CHECK(*right({"--color", "never", "cut", "--help"}).command == Command::cut);
    Faults faults;
    CHECK(parse({"check", "--", "--help"}, faults).count(Opt::help) == 0);
}

TEST_CASE("every mistake is a fault of severity usage") {
    for (const Words& words :
         {Words{"cot"}, Words{"cut"}, Words{"cut", "a"}, Words{"cut", "a", "b", "--nope"},
          Words{"quote"}, Words{"cut", "a", "b", "--only"}, Words{"--times", "2", "cut"},
          Words{"cut", "-", "-"}, Words{"list", "a", "b"}}) {
        Faults faults;
        parse(words, faults);
        CAPTURE(words.back());
        REQUIRE_FALSE(faults.empty());
        CHECK(faults.front().severity == Severity::usage);
    }
}
