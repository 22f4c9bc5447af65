// SPDX-License-Identifier: MIT
// A vehicle that is like another one: the other's tree with what this file says instead, and how
// much larger its panels are. Inside read/ only; read.hpp shows it.
#pragma once

#include "model/scaling.hpp"
#include "read/context.hpp"
#include "read/read.hpp"
#include "read/yaml.hpp"

#include <map>
#include <memory>
#include <optional>
#include <string>

namespace pelt::read {

/// The vehicle that another one is like.
struct Other {
    std::shared_ptr<const Source> source;
    Vehicle vehicle; ///< as it is read alone
    Node root;
};

/// A vehicle from its file alone. What is wrong has been told; it may then be incomplete.
Vehicle read_alone(const Node& root, Context& context);

/// Reads the vehicle under 'like'; without one, what is wrong has been told.
std::optional<Other> read_other(const Entry& like, const FindInstalled& find, Context& context);

/// What of a panel comes from the other vehicle; nothing of one that only this file has.
using Inherited = std::map<std::string, Stretched>;

/// The tree of both files. `inherited` has an entry for every panel that has something of the
/// other's.
Node merged(const Node& own, const Node& other, Inherited& inherited, Context& context);

/// How many times as large, by axis of the vehicle.
struct Growth {
    double length = 1;
    double width = 1;
    double height = 1;
};

/// From the other's sizes over all to this vehicle's, which are completed by the other's. `place`
/// is told where they do not go together; a width that may be taken over mirrors is warned of.
Growth growth_to(Overall& own, const Vehicle& other, const Place& place, Context& context);

/// Scales what was inherited, and marks the panel as guessed when that is its form.
void be_like(Panel& panel, const Growth& growth, const Stretched& inherited);

} // namespace pelt::read
