// SPDX-License-Identifier: MIT
// The parts of a cut sheet, for formats that put drawings between them.
#pragma once

#include "report/report.hpp"

namespace pelt::report {

/// Job, order, what it assumes, what needs a decision, how the film lies.
Document first_page_of(const Sheet& sheet);
/// The list in the order of laying, pieces, figures, offcuts, cautions.
Document after_the_cutting(const Sheet& sheet);

} // namespace pelt::report
