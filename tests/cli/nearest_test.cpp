// SPDX-License-Identifier: MIT
#include "cli/nearest.hpp"

#include <doctest/doctest.h>

using namespace pelt::cli;
using Words = std::vector<std::string>;

TEST_CASE("a letter changed, put in, left out or swapped is near") {
    const Words words{"only", "without", "times"};
    CHECK(nearest("onli", words) == Words{"only"});
    CHECK(nearest("onlyy", words) == Words{"only"});
    CHECK(nearest("tims", words) == Words{"times"});
    CHECK(nearest("tmies", words) == Words{"times"});
    CHECK(nearest("witout", words) == Words{"without"});
}

TEST_CASE("words that share little are not near") {
    CHECK(nearest("xylophone", {"only", "times"}).empty());
    CHECK(nearest("", {"by", "only"}).empty());
    CHECK(nearest("q", {"by"}).empty());
    CHECK(nearest(std::string(5000, 'a'), {"by"}).empty());
}

TEST_CASE("the nearest come first, at most three") {
    CHECK(nearest("aabc", {"aaxx", "aabd", "aabc"}) == Words{"aabc", "aabd"});
    CHECK(nearest("aaa", {"aab", "aac", "aad", "aae"}) == Words{"aab", "aac", "aad"});
}

TEST_CASE("the question names them all") {
    CHECK(did_you_mean({}) == "");
    CHECK(did_you_mean({"by"}, "--") == "did you mean '--by'?");
    CHECK(did_you_mean({"a", "b", "c"}) == "did you mean 'a', 'b' or 'c'?");
}
