// SPDX-License-Identifier: MIT
// The pages of a cut sheet before they become bytes.
#pragma once

#include "report/draw/picture.hpp"
#include "report/paper/flow.hpp"
#include "report/report.hpp"

#include <vector>

namespace pelt::report::paper {

PageSize size_of(Paper paper);

std::vector<draw::Picture> sheet_pages(const Sheet& sheet, Paper paper,
                                       const draw::Letters& letters);
/// A form to measure by; with a vehicle, for its panels.
std::vector<draw::Picture> form_pages(const Vehicle* vehicle, Paper paper,
                                      const draw::Letters& letters);

/// Patterns in full size.
std::vector<draw::Picture> pattern_pages(const Sheet& sheet, Paper paper,
                                         const draw::Letters& letters);

} // namespace pelt::report::paper
