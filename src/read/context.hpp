// SPDX-License-Identifier: MIT
// What the readers of one file share. Inside read/ only.
#pragma once

#include "model/fault.hpp"
#include "model/length.hpp"
#include "read/input_file.hpp"
#include "read/known_scans.hpp"

#include <cstddef>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace pelt::read {

/// Collects the faults of a file, each with the panel that is being read.
class Context {
public:
    Unit unit = Unit::mm;         ///< of lengths written without one
    std::map<const Source*, Unit> units_of_others; ///< in files that this one takes values from
    std::string panel;            ///< the panel that is being read; empty outside of panels
    std::vector<InputFile> files; ///< that were opened because this one names them
    std::shared_ptr<KnownScans> scans = std::make_shared<KnownScans>(); ///< that it names
    std::map<std::string, std::string> remedies; ///< for wrong references, by sort and name

    /// Of lengths that are written without one at this place.
    Unit unit_at(const Place& place) const {
        const auto other = units_of_others.find(place.source.get());
        return other == units_of_others.end() ? unit : other->second;
    }

    void fault(const Place& place, std::string what, std::string remedy = {});
    void add(Faults faults);

    /// True when so much was told that further sentences are not kept, only counted.
    bool full() const;

    /// Takes so many points of an outline from what a file may draw; a fault, once, where that is
    /// over.
    bool may_draw(std::size_t points, const Place& place);

    /// Takes so many letters from what may be compared to tell which name was meant; false, without
    /// a word, where that is over.
    bool may_compare(std::size_t letters);

    /// True when something that is wrong was told since `mark()` gave this number; warnings are not.
    bool told_since(std::size_t mark) const { return wrong_ > mark; }
    std::size_t mark() const { return wrong_; }

    /// The first hundred by place, and how many more there are.
    void finish(Faults& faults, std::size_t& unlisted) &&;

private:
    Faults faults_;
    std::size_t told_ = 0;
    std::size_t wrong_ = 0;
    std::size_t drawn_ = 0;
    std::size_t compared_ = 0;
};

} // namespace pelt::read
