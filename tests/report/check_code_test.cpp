// SPDX-License-Identifier: MIT
#include "report/check_code.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace pelt::report;

// The check value of this CRC over the digits 1 to 9, as catalogues of CRCs print it (from memory).
TEST_CASE("the CRC-32 of the nine digits is the published check value") {
    CHECK(crc32_hex("123456789") == "CBF43926");
    CHECK(crc32_hex("") == "00000000");
}

TEST_CASE("a check code tells files apart, their order and where one ends") {
    CHECK(check_code({"ab", "c"}) != check_code({"a", "bc"}));
    CHECK(check_code({"ab", "c"}) != check_code({"c", "ab"}));
    CHECK(check_code({"ab", "c"}) != check_code({"ab", "C"}));
    CHECK(check_code({"ab"}) == crc32_hex(std::string("ab\0", 3)));
}
