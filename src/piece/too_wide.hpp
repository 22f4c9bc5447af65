// SPDX-License-Identifier: MIT
// The sentence for a panel that the film's width does not take. Inside piece/ only.
#pragma once

#include "piece/panel_job.hpp"

namespace pelt::piece {

/// Severity job: the panel, its size with tucks, the usable width, and what would help.
Fault too_wide_fault(const PanelJob& job);

} // namespace pelt::piece
