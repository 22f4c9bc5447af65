// SPDX-License-Identifier: MIT
// What is said where stock does not hold a job. Inside order/ only.
#pragma once

#include "order/batches.hpp"

#include <optional>
#include <string>

namespace pelt::order {

/// Of work half done: the pieces that found no place on what is left, and how much film they would
/// take. `batch`: that of the new film; empty: any.
Fault what_is_missing(const Job& job, const Layout& layout, const std::string& batch);

/// How much of the batch is missing; `layout` as below.
ShortStock how_short(const Job& job, const Batch& batch, const Layout& layout);

/// `layout`: what must be of one batch, laid on this one and, where it does not suffice, on new
/// film. Where it suffices: what the whole job costs with it (none: new film has no known price),
/// and what it costs as it is planned, at -v only; else a warning and a remark on the pieces.
Faults what_forces_new_film(const Job& job, const Batch& batch, const Layout& layout,
                           std::optional<Money> cost, Money planned);

} // namespace pelt::order
