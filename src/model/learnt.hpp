// SPDX-License-Identifier: MIT
// What a shop's log teaches.
#pragma once

#include "model/fault.hpp"
#include "model/film.hpp"
#include "model/panel_name.hpp"

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace pelt {

/// Pieces of one kind of panel in one kind of film.
struct Tried {
    std::int64_t stayed = 0;
    std::int64_t spoiled = 0;
    std::int64_t laid() const { return stayed + spoiled; }
};

/// How many minutes are taken for a minute reckoned.
struct PaceLearnt {
    double pace = 1;
    std::int64_t panels = 0; ///< that it was learnt from; 0: it is the shop file's
};

/// Guessed lengths against what the vehicles took.
struct GuessesLearnt {
    std::int64_t within = 0; ///< of those with a range
    std::int64_t ranges = 0;
    std::int64_t all = 0;
    double ratio = 1; ///< measured over reckoned (of a range its middle), geometric mean
};

struct Learnt {
    std::shared_ptr<const Source> log;
    std::string who; ///< whose rows these are; empty: everybody's
    std::int64_t rows = 0;
    std::map<std::pair<PanelKind, FilmKind>, Tried> redo;
    PaceLearnt pace;
    GuessesLearnt guesses;
    std::map<std::string, std::int64_t> not_known; ///< panels that no table knows, and their rows
};

/// A panel's share of it: "by your log: 3 of 41".
struct RedoByLog {
    std::string panel;
    double percent = 0;
    Tried tried;
};

} // namespace pelt
