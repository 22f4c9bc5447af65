// SPDX-License-Identifier: MIT
// From the command line to a request, and the request carried out. Inside cli/ only.
#pragma once

#include "cli/context.hpp"
#include "cli/search_watch.hpp"
#include "order/order.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::cli {

/// The roll widths of `--width`, in the order given.
std::vector<Um> widths_asked(const Arguments& arguments);

/// `--on-hand` with its `--flaw`.
std::optional<StockRoll> roll_on_hand(const Arguments& arguments);

/// The panels that the options ask for.
order::Selection selection_of(const Arguments& arguments);

/// `--threads`; all there are where it is not given.
int threads_of(const Arguments& arguments);

/// The wishes of the command line, without the files; of several widths the first.
order::Request wishes_of(const Arguments& arguments);

/// Shows on a terminal how far a search is; ended after so many seconds and by Ctrl-C.
SearchWatch watch_for(std::optional<double> seconds, const Context& context);

struct Searched {
    order::Outcome outcome;
    std::string stopped_by;   ///< "time", "Ctrl-C"; empty: the search ended by itself
    bool interrupted = false; ///< by Ctrl-C, also where that came too late to stop anything
};

/// Plans one job, showing how far it is, until its end, the end of these seconds, or Ctrl-C. A
/// search that was stopped has a warning among its faults.
Searched search(order::Request request, std::optional<double> seconds, const Context& context);

} // namespace pelt::cli
