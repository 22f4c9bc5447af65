// SPDX-License-Identifier: MIT
// One page of the measuring form: a panel to sketch, and its readings. Inside paper/ only.
#pragma once

#include "model/vehicle.hpp"
#include "report/paper/flow.hpp"

#include <string>

namespace pelt::report::paper {

/// What is printed on it already; empty words are left to fill in.
struct SketchOf {
    std::string panel;
    std::string sides;
    bool girths = false; ///< read at stations along a spine, not corner by corner
};

/// "left + right, 2".
std::string count_text(const Panel& panel);

SketchOf sketch_of(const Panel& panel);

/// Begins a new page.
void add_sketch(Flow& flow, const SketchOf& what, const draw::Letters& letters);

} // namespace pelt::report::paper
