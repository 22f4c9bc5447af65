// SPDX-License-Identifier: MIT
// What a shop's figures say of a job, in a sheet's few lines. Inside report/ only.
#pragma once

#include "model/learnt.hpp"
#include "model/quote.hpp"
#include "report/json_text.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// Hours, and the day it is ready.
std::vector<std::string> work_in_brief(const Quote& quote);

/// What a shop's log changed, a sentence a matter; empty: nothing.
std::vector<std::string> pace_by_the_log(const Quote& quote);
std::vector<std::string> redo_by_the_log(const Quote& quote);
/// Both.
std::vector<std::string> by_the_log(const Quote& quote);

/// How guessed lengths came out, by a log that has some.
std::string guesses_told(const GuessesLearnt& guesses);

/// "3 of 41".
std::string tried_text(const Tried& tried);

/// As pelt.quote/1 has them, on one line.
Json json_quote(const Quote& quote);
/// The same keys, added to an object.
void add_quote(JsonObject& out, const Quote& quote);

} // namespace pelt::report
