// SPDX-License-Identifier: MIT
#include "fuzzed.hpp"

#include <algorithm>
#include <array>

namespace pelt::fuzzed {
namespace {

constexpr std::array<Target, 13> all{{{"vehicle", vehicle},
                                      {"table", table},
                                      {"film", film},
                                      {"stock", stock},
                                      {"shop", shop},
                                      {"jobs", jobs},
                                      {"jobs_table", jobs_table},
                                      {"log", log},
                                      {"obj", obj},
                                      {"ply", ply},
                                      {"stl", stl},
                                      {"words", words},
                                      {"whole", whole}}};

} // namespace

std::span<const Target> targets() {
    return all;
}

void run(std::string_view target, std::string_view bytes) {
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const Target& known) { return known.name == target; });
    if (found == all.end())
        throw std::out_of_range("no target " + std::string(target));
    found->run(bytes);
}

} // namespace pelt::fuzzed
