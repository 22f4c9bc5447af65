// SPDX-License-Identifier: MIT
// What the check says of a plan, for its tests.
#pragma once

#include "verify/right_plans.hpp"
#include "verify/verify.hpp"

#include <algorithm>
#include <memory>
#include <string>
#include <vector>

namespace pelt::test {

using Told = std::vector<std::string>;

inline Told faults_of(const RightPlan& plan) {
    return verify::verify(std::make_shared<const Job>(plan.job), plan.layout).faults;
}

inline bool says(const Told& told, const std::string& sentence) {
    return std::any_of(told.begin(), told.end(), [&](const std::string& fault) {
        return fault.find(sentence) != std::string::npos;
    });
}

} // namespace pelt::test
