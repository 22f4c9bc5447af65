// SPDX-License-Identifier: MIT
// The driver: from files that were read to what to buy and how to cut it. Drives develop, piece,
// nest and verify; knows prices, which none of them does.
#pragma once

#include "develop/develop.hpp"
#include "model/estimate.hpp"
#include "model/finish.hpp"
#include "model/order.hpp"
#include "model/panel_area.hpp"
#include "model/plan.hpp"
#include "model/quote.hpp"
#include "model/shop.hpp"
#include "model/stock.hpp"
#include "model/strip_list.hpp"
#include "nest/nest.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pelt::order {

/// Which panels to cut, in the words of the command line: a panel's name, or a group; behind a
/// name, as far as wanted, a side, which of several that are alike, and the piece of a divided
/// panel: "front bumper/1", "side wall/left/2", "door handle/left/no 2". Where a group has a
/// panel's name, the panel is meant.
struct Selection {
    std::vector<std::string> only;         ///< empty: all but the extras
    std::vector<std::string> without;      ///< taken away from those
    std::vector<std::string> with;         ///< extras to add, by their name
    std::vector<std::string> done = {};    ///< on the vehicle already
    std::vector<std::string> spoiled = {}; ///< to be cut again; without `done` all else is done
};

/// One run of `pelt cut`.
struct Request {
    std::vector<Vehicle> vehicles;
    Film film;
    CutBy by = CutBy::straight;
    Selection selection;
    std::vector<std::string> leave; ///< hardware that stays on
    Seams seams = Seams::fitter;
    std::optional<MarginWish> margin; ///< `--margin`: straight, instead of the film's
    int times = 1;
    Um tolerance = 0;             ///< `--tolerance`: how far every tape reading may be off
    std::optional<Um> width;      ///< `--width`: instead of the film's own
    std::vector<StockRoll> stock; ///< what lies on the shelf; rolls of other films are passed over
    bool invented_stock = false;  ///< its file is a demonstration
    std::optional<int> stages = 3;
    bool free_turns = false; ///< `--turns any`
    std::optional<Um> table;
    bool in_order = false; ///< `--in-order`
    std::optional<double>
        sure_percent;             ///< `--sure`: spare film, so that so many of 100 jobs suffice
    bool weigh_the_rules = false; ///< straight: also say what the rules above cost in film
    bool weigh_the_seams = false; ///< also say what other seams, none, or narrow margins would save
    bool find_binding = false;    ///< also say what binds the length
    bool weigh_the_spare = false; ///< also say which panel most of it is for
    nest::Effort effort;
    bool until_stopped = false; ///< after this effort looks on until the watch says stop
    nest::Watch watch;                                   ///< may be empty
    std::shared_ptr<develop::LaidScans> scans = nullptr; ///< kept for other runs; may be empty
    std::shared_ptr<const Learnt> learnt = nullptr;      ///< of the shop's log; may be empty
    std::vector<std::shared_ptr<const Source>> also_read = {}; ///< the shop's files
};

/// What came of it. Without a plan `faults` says why; with one they are warnings and notes, and
/// where what is left for work half done is too short, a fault of severity job.
struct Outcome {
    std::optional<Plan> plan;
    Order order;
    Faults faults;
    RulesCost rules_cost;
    Binding binding; ///< empty: not asked for
    SeamsWeighed seams_weighed; ///< empty: not asked for
};

/// Plans one job. Throws ProgramError when the layout fails its check.
Outcome run(Request request);

/// Whether the job is about a panel that was not measured. It then can only be estimated.
bool is_guessed(const Request& request);

/// Without an estimate `faults` says why.
struct EstimateOutcome {
    std::optional<Estimate> estimate;
    Faults faults;
};

/// How much film a job with guessed panels takes, from new film alone: 200 vehicles drawn by what
/// is assumed of their sizes (trade/likeness.hpp) are laid out straight; by contour their lengths
/// are taken in the proportion of the two as scaled.
EstimateOutcome estimate(const Request& request);

/// Another way to do a job that might take less film, to be planned like any other.
struct WhatIf {
    std::string what; ///< "with any number of turns of the film"
    Request request;
};

/// The same job, to be compared with what would change it: along outlines, where a search takes
/// seconds, laid out quickly.
Request to_compare(Request request);

/// What could make the film shorter: a wider roll (the next common width), a freer direction, any
/// number of turns, another order of laying, a seam across the longest piece that binds the length,
/// an exact tape. `outcome` is what came of `request`, its binding pieces asked for. Each is as
/// `to_compare`.
std::vector<WhatIf> what_ifs(const Request& request, const Outcome& outcome);

/// What is wrong with a job before any film is laid out: what needs the vehicles and the film
/// together, such as a panel that the film cannot be cut for.
Faults examine(Request request);

/// The order in which pieces are laid on the vehicle (trade/laying.cpp): door jambs; then from the
/// top down and from the middle out: roof and pillars, hood, rear lids and spoilers; the left side
/// from front to rear, the right side; what is not known; bumpers; small parts last. One vehicle is
/// finished before the next begins. Gives indices into `ids`.
std::vector<std::size_t> laying_order(const Job& job, const std::vector<PieceId>& ids);

/// The same by piece and copy: each one's place in that order.
std::vector<std::vector<std::size_t>> places_in_laying(const Job& job);

/// Which way is forward in a panel's drawing, as the panel or its side and the film say.
std::optional<Heading> forward_of(const Job& job, const PieceId& id);
/// Where film is tucked at the edges and openings of a main piece, where it ends flush or short.
/// `id` is one of the piece's ids.
PieceFinish finish_of(const Job& job, const Piece& piece, const PieceId& id);
/// Whether the piece is the mirror image of the panel's drawing.
bool is_mirrored(const Job& job, const PieceId& id);

/// Where one of two pieces lies on its panel: "upper", "front", "left"; empty where there are more,
/// or it is not known.
std::string where_on_panel(const Job& job, const PieceId& id);

/// One run of `pelt area`.
struct AreaRequest {
    Vehicle vehicle;
    std::optional<Film> film; ///< none: tucks that the vehicle leaves to the film are 0
    Selection selection;
    std::vector<std::string> leave; ///< hardware that stays on
    int threads = 1;                ///< scans are laid flat side by side
    bool stretch_in_detail = true;  ///< also the bound of a scan's stretch and where it is how much
    std::shared_ptr<develop::LaidScans> scans = nullptr; ///< kept for other runs; may be empty
};

/// In the order of the file, a row a side. Empty rows where `faults` says why.
struct AreaOutcome {
    std::vector<PanelArea> rows;
    Faults faults;
};

/// What every panel takes of film, in one piece however wide the roll.
AreaOutcome areas(const AreaRequest& request);

/// One run of `pelt strip`.
struct StripRequest {
    Vehicle vehicle;
    Selection selection;
    std::vector<std::string> leave;
    std::optional<Film> film = std::nullopt; ///< none: no edge is called too much for it
    Shop shop = {};                          ///< its prices and its pace
};

/// The list is meaningless when `faults` stop.
struct StripOutcome {
    StripList list;
    Faults faults;
};
StripOutcome strip(const StripRequest& request);

/// What a quote asks beyond the plan.
struct QuoteWishes {
    bool old_film_everywhere = false;
    std::vector<std::string> old_film; ///< panels that bear old film, as options name them
    std::optional<Day> start;
    std::optional<Day> film_arrives; ///< nothing is laid before
};

/// One film of a job to quote: planned, or estimated where not all was measured.
struct FilmToQuote {
    std::shared_ptr<const Job> job; ///< its pieces
    Length taken;                   ///< off all rolls, with what is spare
    Order order;
    std::optional<LengthRange> range = std::nullopt; ///< none: it was planned
};

/// Of an outcome with a plan; of an estimate.
FilmToQuote film_to_quote(const Outcome& planned);
FilmToQuote film_to_quote(const Estimate& estimate);

/// What none of the films of one job covers, sorted.
std::vector<LeftOut> left_out_of_all(const std::vector<FilmToQuote>& films);

/// What the films of one job cover.
Covered what_is_covered(const std::vector<FilmToQuote>& films);

/// What a shop's log teaches, of some people or, with an empty `who`, of all. The shop's own
/// minutes and pace are what it is weighed against. None: the shop keeps no log.
std::shared_ptr<const Learnt> learnt_from(const Shop& shop, const std::vector<std::string>& who);

/// The chance in percent that a log makes of what is usual: of 20 panels as usual and those that
/// were tried, the share that was spoiled.
double updated_percent(double usual_percent, const Tried& tried);

/// Hours, days, consumables and price of one job in one film or more; a range besides where one of
/// them is estimated.
Quote quote(const std::vector<FilmToQuote>& films, const Shop& shop, const QuoteWishes& wishes);

} // namespace pelt::order
