// SPDX-License-Identifier: MIT
// What to buy.
#pragma once

#include "model/learnt.hpp"
#include "model/length.hpp"
#include "model/money.hpp"
#include "model/piece.hpp"
#include "model/stock.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// One uncut length: `count` times `by`.
struct OrderLine {
    Length by;
    std::int64_t count = 0;
    std::optional<Money> price; ///< of one `by`; none: not known
    std::string batch;          ///< empty: not known
    Length length() const { return count * by; }
};

/// Another way to buy the same, and what it costs beyond the cheapest.
struct NextBest {
    std::vector<OrderLine> lines;
    Money total;
    Money more;
};

/// How often a panel's pieces have to be done again.
struct RedoChance {
    int vehicle = 0; ///< index into the job's vehicles
    int panel = 0;   ///< index into that vehicle's panels
    double percent = 0;
    bool assumed = true;                        ///< neither the vehicle file's nor the log's
    std::optional<Tried> by_log = std::nullopt; ///< what the log has of such panels
};

/// Offcuts that are kept for a panel's pieces, should they be spoiled.
struct KeptForRecuts {
    int vehicle = 0;
    int panel = 0;
    int pieces = 0; ///< so many can be cut from them
};

/// Film for pieces that are spoilt and cut again.
struct Spare {
    double sure_percent = 0; ///< asked for
    Um needed = 0;           ///< the least spare that suffices so often
    /// How often an order without any spare suffices: what is bought beyond the length needed, since
    /// film is sold by whole lengths, is spare all the same.
    double bare_percent = 0;
    Length bare_order = {}; ///< what that order is; 0: nothing is bought
    /// How often what is there suffices if what is left on several rolls is one length, and how
    /// often however remakes fall on those rolls. The same where it is on one roll.
    double enough_percent = 0;
    double surely_percent = 0;
    int costliest_vehicle = 0; ///< of the panel without whose remakes least spare would do
    int costliest_panel = 0;
    Um costliest_film = 0; ///< how much less; 0: no panel alone
    Um longest_remake = 1; ///< of those that may come up at all within `needed`
    std::vector<RedoChance> redo;
    /// Beside the film that is spare; each probability is then a lower bound.
    std::vector<KeptForRecuts> kept = {};
};

/// Stock that holds too little of a job, which is then cut from new film.
struct ShortStock {
    std::string stock; ///< "stock A", "the stock of batch B12": of all batches that hold most
    Um more = 0;       ///< about so much more of it would do; 0: it would do, new film is cheaper
    /// What the job would cost from it, where it would do; none: new film has no known price.
    std::optional<Money> cost = std::nullopt;
};

struct Order {
    std::vector<OrderLine> lines; ///< one per new roll of the plan, in their order
    std::optional<Money> total;   ///< none where a price is not known
    std::string currency;
    bool cheapest = false; ///< proved: whatever holds these pieces costs no less
    std::optional<NextBest> next_best = std::nullopt; ///< none: there is only one way
    std::optional<Spare> spare = std::nullopt;        ///< none: not asked for, nothing is spare
    std::vector<CostOfLength> stock_costs = {}; ///< of the job's first rolls, those from stock
    std::optional<ShortStock> short_stock = std::nullopt; ///< none: nothing forces new film
    Length length() const {
        Length sum;
        for (const OrderLine& line : lines)
            sum = sum + line.length();
        return sum;
    }
};

/// How much film a panel takes more when it is a millimetre longer along the film, the pieces in
/// their places.
struct Pull {
    int vehicle = 0; ///< index into the job's vehicles
    int panel = 0;   ///< index into that vehicle's panels
    Um film_a_millimetre = 0;
};

/// What makes the film as long as it is.
struct Binding {
    std::vector<PieceId> pieces; ///< the longest chain on every roll, from its free end
    std::vector<Pull> panels;    ///< those that pull at all, the most first
};

/// Another way to cut a panel that is divided where seams are added, and what is then bought.
struct CutOtherwise {
    enum class Is {
        where_film_is_shortest, ///< divided elsewhere
        whole_with_less_margin, ///< in one piece, `margin` on either side across the roll
        whole_across_the_arrow, ///< in one piece, turned by a quarter
    };
    int vehicle = 0; ///< index into the job's vehicles
    int panel = 0;   ///< index into that vehicle's panels
    Is is = Is::where_film_is_shortest;
    Um margin = 0;
    std::optional<Length> order; ///< all that is bought; none: not weighed
};

/// What other seams, none, or narrower margins would come to.
struct SeamsWeighed {
    std::vector<CutOtherwise> panels;
    /// With `trade::comfortable_margin` on flat and nearly flat panels; none: not weighed, or they
    /// have no more.
    std::optional<Length> narrow_margins;
};

/// What rules of straight cutting cost: new film of the best layout found without them. None: not
/// asked for, or not a rule of this job.
struct RulesCost {
    std::optional<Um> any_turns; ///< however often film is turned on the table
    std::optional<Um> any_order; ///< pieces in any order
};

} // namespace pelt
