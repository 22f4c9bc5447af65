// SPDX-License-Identifier: MIT
// What the readers of one file share. Inside read/ only.
#pragma once

#include "model/fault.hpp"
#include "model/length.hpp"
#include "read/input_file.hpp"

#include <cstddef>
#include <memory>
#include <string>
#include <vector>

namespace pelt::read {

/// Collects the faults of a file, each with the panel that is being read.
class Context {
public:
    Unit unit = Unit::mm;         ///< of lengths written without one
    std::string panel;            ///< the panel that is being read; empty outside of panels
    std::vector<InputFile> files; ///< that were opened because this one names them

    void fault(const Place& place, std::string what, std::string remedy = {});
    void add(Faults faults);

    /// True when so much was told that further sentences are not kept, only counted.
    bool full() const;

    /// True when something was told since `mark()` gave this number.
    bool told_since(std::size_t mark) const { return told_ > mark; }
    std::size_t mark() const { return told_; }

    /// The first hundred by place, and how many more there are.
    void finish(Faults& faults, std::size_t& unlisted) &&;

private:
    Faults faults_;
    std::size_t told_ = 0;
};

} // namespace pelt::read
