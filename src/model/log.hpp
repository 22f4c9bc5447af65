// SPDX-License-Identifier: MIT
// What a shop wrote down of its work, as its log tells it, validated.
#pragma once

#include "model/calendar.hpp"
#include "model/fault.hpp"
#include "model/film.hpp"
#include "model/panel_name.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// Alike pieces of one job.
struct LogRow {
    Day date;
    std::string job;
    std::string who;
    FilmKind film = FilmKind::cast;
    std::string panel;           ///< as it was written
    std::optional<PanelKind> is; ///< none: the table of names does not know it
    std::int64_t stayed = 0;     ///< pieces that stayed on
    std::int64_t spoiled = 0;
    std::optional<double> minutes; ///< for all of them; none: not timed
};

/// A vehicle that was guessed and then measured.
struct GuessRow {
    std::string vehicle;
    Um low = 0; ///< what was reckoned; the same twice where it was one length
    Um high = 0;
    Um measured = 0; ///< what it took
};

struct Log {
    std::shared_ptr<const Source> source;
    std::vector<LogRow> rows;
    std::vector<GuessRow> guesses;
};

} // namespace pelt
