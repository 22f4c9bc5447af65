// SPDX-License-Identifier: MIT
// From blanks to pieces: tucks, stops, openings, margins, the ruler, mirroring; then the grid.
#pragma once

#include "model/blank.hpp"
#include "model/film.hpp"
#include "model/finish.hpp"
#include "model/piece.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::piece {

/// The wishes that shape pieces, besides the files.
struct Wishes {
    CutBy by = CutBy::straight;
    int times = 1;
    std::vector<std::string> left_on; ///< hardware that stays on (see staying_on)
    Seams seams = Seams::fitter;
    bool free_turns = false; ///< `--turns any`: film of any direction may lie askew
};

/// The hardware that stays on when `leave` does: also what can only come off after it (`after`).
/// In the order of the list, each once.
std::vector<std::string> staying_on(const std::vector<Hardware>& hardware,
                                    const std::vector<std::string>& leave);

/// The panel with handling and bleed so much larger that its pieces cover it when every reading was
/// off by its own tolerance or, where it has none, by `tolerance`.
Panel allowing_for_errors(Panel panel, const Film& film, const Wishes& wishes, Um tolerance);

/// One way to cut a panel: the pieces of all its sides and faces, inlays last, and the seams
/// between them. Of two parts the one with the lower number never lies over the other; parts are
/// laid from the first to the last, inlays before all.
struct Way {
    std::vector<Piece> pieces;
    std::vector<Seam> seams;
};

/// How to cut one panel: one way; with `Seams::thrifty` every one that is worth trying, a few at
/// most. Whole where it fits the film, or along the seam lines that are always used; else along the
/// fewest seam lines that do, or in strips (fitter.hpp). Equal panels give equal ways whatever
/// they are called. Empty when there is none: then `faults` says why (severity job where the film
/// is too narrow). Copies are 1 … count × faces × times; with two faces the odd ones are the outer
/// face, the even ones the mirrored inner one.
/// `vehicle_index` and `panel_index` go into the ids.
std::vector<Way> ways_to_cut(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                             const Wishes& wishes, int vehicle_index, int panel_index,
                             Faults& faults);

/// The way forward in a panel's drawing, as the panel or its side says; along +x where film may lie
/// in any direction; none where the file has to say and does not.
std::optional<Heading> forward_of(const Panel& panel, const Film& film);

/// How an end of a panel is called on the vehicle: "front", "upper", "left"; of the piece frame's x
/// axis or its y axis, the high end or the low one, of a piece that is not mirrored.
std::string end_called(const Panel& panel, const Film& film, bool of_x, bool high);

/// What is done at the edges and openings that one piece of a panel covers, wholly or in part; what
/// lies on it only through the lap at a seam is the other part's. Only film that stays on counts:
/// margins and bleed do not. `piece` is one of the panel's main pieces, `id` one of its ids. Empty
/// where the panel was not developed.
PieceFinish finish_of(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                      const std::vector<std::string>& left_on, const Piece& piece,
                      const PieceId& id);

/// Whether the piece is the mirror image of what was drawn: the right one of a pair, or the inner
/// one of two faces, but not both.
bool is_mirrored(const Panel& panel, const PieceId& id);

/// Lengths of a panel's rims, one side of it, laid flat, in millimetres.
struct RimLengths {
    double tucked = 0;         ///< edges and openings that film is tucked round; seams are none
    double over_the_limit = 0; ///< of those, where the tuck asks more than the film gives on an edge
    double cut_out = 0;        ///< round openings that are cut out on the vehicle
};
RimLengths rims_of(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                   const std::vector<std::string>& left_on);

/// The openings that film runs over while their parts are off, by name.
std::vector<std::string> openings_covered(const Panel& panel, const DevelopedPanel& developed,
                                          const Film& film,
                                          const std::vector<std::string>& left_on);

/// What `pelt area` tells of a panel: its film in one piece however wide the roll, without seams
/// and inlays.
struct PanelFilm {
    Polygon wrapped;    ///< the film that stays on, in the panel's own frame
    double cut_mm2 = 0; ///< as it leaves the roll
};
/// None: `faults` says why.
std::optional<PanelFilm> film_on(const Panel& panel, const DevelopedPanel& developed,
                                 const Film& film, const Wishes& wishes, Faults& faults);

} // namespace pelt::piece
