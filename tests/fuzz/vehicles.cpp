// SPDX-License-Identifier: MIT
// Vehicles, as YAML and as tables.
#include "order/order.hpp"
#include "sources.hpp"

namespace pelt::fuzzed {
namespace {

/// As far as areas: what was read is developed and gets its tucks.
void examine(const read::Reading<Vehicle>& reading) {
    expect_told(reading);
    if (!reading.value)
        return;
    expect_sentences(order::areas({*reading.value, std::nullopt, {}, {}}).faults);
    expect_sentences(order::strip({*reading.value, {}, {}}).faults);
}

} // namespace

void vehicle(std::string_view bytes) {
    examine(read::vehicle(source(bytes)));
}

void table(std::string_view bytes) {
    examine(read::vehicle(table_source(bytes)));
}

} // namespace pelt::fuzzed
