// SPDX-License-Identifier: MIT
// Jobs of upright rectangles, for the tests of ordering.
#pragma once

#include "asked_jobs.hpp"
#include "order/order.hpp"
#include "read/read.hpp"

#include <algorithm>
#include <cstdint>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace pelt::order_test {

inline std::shared_ptr<const Source> source(std::string text) {
    return std::make_shared<const Source>(Source{"t.yaml", std::move(text)});
}

template <class T>
T value_of(const read::Reading<T>& reading) {
    if (!reading.value)
        throw std::runtime_error(to_string(reading.faults.at(0)));
    return *reading.value;
}

inline Vehicle vehicle(const std::string& panels) {
    return value_of(read::vehicle(source("vehicle: T\ndemonstration: yes\npanels:\n" + panels)));
}

inline Film film(const std::string& more) {
    return value_of(read::film(source("film: F\ndemonstration: yes\n" + more)));
}

inline std::vector<StockRoll> stock(const std::string& rolls) {
    return value_of(read::stock(source("stock:\n" + rolls))).rolls;
}

/// Knuth's 64-bit linear congruence (MMIX; from memory), its upper bits.
class Chance {
public:
    explicit Chance(std::uint64_t seed) : state_(seed * 2 + 1) {}
    std::size_t below(std::size_t end) {
        state_ = state_ * 6364136223846793005U + 1442695040888963407U;
        return (state_ >> 33) % end;
    }
    std::size_t between(std::size_t low, std::size_t high) { return low + below(high - low + 1); }

private:
    std::uint64_t state_;
};

using test::asked_jobs;

inline std::string first_fault(const Faults& faults) {
    for (const Fault& fault : faults)
        if (stops({fault}))
            return to_string(fault, false);
    return {};
}

/// The warnings whose text holds `part`.
inline std::size_t warnings_with(const Faults& faults, const std::string& part) {
    std::size_t count = 0;
    for (const Fault& fault : faults)
        count += fault.severity == Severity::warning &&
                         (fault.what + fault.remedy).find(part) != std::string::npos
                     ? 1
                     : 0;
    return count;
}

} // namespace pelt::order_test
