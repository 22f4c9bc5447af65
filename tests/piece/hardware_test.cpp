// SPDX-License-Identifier: MIT
// Parts that stay on while wrapping.
#include "piece/piece.hpp"

#include <doctest/doctest.h>

using namespace pelt;

namespace {

Hardware part(std::string name, std::vector<std::string> after = {}) {
    Hardware out;
    out.name = std::move(name);
    out.after = std::move(after);
    return out;
}

using Names = std::vector<std::string>;

} // namespace

TEST_CASE("what must come off after a part that stays on stays on too, and what waits for that") {
    const std::vector<Hardware> hardware{part("handles", {"cards"}), part("cards", {"trim"}),
                                         part("trim"), part("mirrors")};
    CHECK(piece::staying_on(hardware, {}).empty());
    CHECK(piece::staying_on(hardware, {"handles"}) == Names{"handles"});
    CHECK(piece::staying_on(hardware, {"cards"}) == Names{"handles", "cards"});
    CHECK(piece::staying_on(hardware, {"trim"}) == Names{"handles", "cards", "trim"});
    CHECK(piece::staying_on(hardware, {"mirrors", "cards"}) ==
          Names{"handles", "cards", "mirrors"});
}

TEST_CASE("parts that wait for one another do not hang") {
    CHECK(piece::staying_on({part("a", {"b"}), part("b", {"a"})}, {"a"}) == Names{"a", "b"});
}

TEST_CASE("names that this vehicle does not have are passed over") {
    CHECK(piece::staying_on({part("a")}, {"another's"}).empty());
}
