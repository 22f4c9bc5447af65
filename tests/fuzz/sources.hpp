// SPDX-License-Identifier: MIT
// Bytes as a file that was read, and what holds for whatever was read of it.
#pragma once

#include "fuzzed.hpp"
#include "read/read.hpp"

#include <memory>
#include <string>

namespace pelt::fuzzed {

inline std::shared_ptr<const Source> source(std::string_view bytes) {
    return std::make_shared<const Source>(Source{"fuzzed.yaml", std::string(bytes)});
}

inline std::shared_ptr<const Source> table_source(std::string_view bytes) {
    return std::make_shared<const Source>(Source{"fuzzed.csv", std::string(bytes), true});
}

template <class T>
void expect_told(const read::Reading<T>& reading) {
    expect_sentences(reading.faults);
    expect(reading.value.has_value() == !stops(reading.faults),
           "a value, or a fault that stops: neither or both");
    expect(reading.faults.size() <= 101, "more than a hundred faults are listed");
}

} // namespace pelt::fuzzed
