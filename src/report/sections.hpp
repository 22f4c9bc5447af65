// SPDX-License-Identifier: MIT
// The parts of a cut sheet, for formats that put drawings between them.
#pragma once

#include "report/report.hpp"

#include <string>

namespace pelt::report {

/// Job, order, what it assumes, what needs a decision, how the film lies. `cautions_at`: where the
/// cautions stand, as "page 2".
Document first_page_of(const Sheet& sheet, const std::string& cautions_at);
/// For paper: the one list of all pieces, in the order of laying, and how it is read.
Document list_of_pieces(const Sheet& sheet);
/// For paper: figures, offcuts, cautions.
Document last_page_of(const Sheet& sheet);

} // namespace pelt::report
