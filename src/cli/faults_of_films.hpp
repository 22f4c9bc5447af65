// SPDX-License-Identifier: MIT
// Faults that one vehicle has with several films. Inside cli/ only.
#pragma once

#include "model/fault.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace pelt::cli {

/// Keeps each fault once, with the films that have it.
class FaultsOfFilms {
public:
    explicit FaultsOfFilms(std::size_t films) : films_(films) {}

    void add(const Faults& faults, const std::string& film);

    /// In the order in which they came; what is not common to all films names those that have it.
    Faults all() const;

private:
    struct Found {
        Fault fault;
        std::vector<std::string> films;
    };
    std::size_t films_;
    std::vector<Found> found_;
};

} // namespace pelt::cli
