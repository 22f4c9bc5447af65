// SPDX-License-Identifier: MIT
// What a job asks of people: minutes of every stage and panel, and what drives them. Inside order/
// only.
#pragma once

#include "model/plan.hpp"
#include "model/quote.hpp"
#include "model/shop.hpp"
#include "trade/labor.hpp"

#include <array>
#include <cstddef>
#include <string>
#include <vector>

namespace pelt::order {

/// One side and copy of a panel.
struct PanelWork {
    PieceId id; ///< of its first piece
    std::string label;
    Minutes time;
    TimeFrom from = TimeFrom::shape;
    bool with_help = false; ///< so large that two people lay it
};

/// One part to take off and to put back, all of its count, on all vehicles alike.
struct PartWork {
    std::string name;
    Minutes off;
    std::vector<std::size_t> after; ///< places of parts that come off before it
};

/// What minutes and consumables are reckoned by.
struct Drivers {
    double covered_m2 = 0;
    double old_film_m2 = 0;
    double tucked_m = 0;
    double over_the_limit_m = 0; ///< tucks that ask more than the film gives on an edge
    double cut_out_m = 0;        ///< cut on the vehicle
    double seam_m = 0;
    int pieces = 0;
    int inlays = 0;
    int old_film_pieces = 0;
    int badges = 0;
    int clips = 0;
    int vehicles = 0;
};

struct JobWork {
    std::vector<PanelWork> panels; ///< in the order of laying
    std::vector<PartWork> parts;   ///< in the order of taking off
    Drivers drivers;
    /// Of every stage, by its number; that of the panels is their sum.
    std::array<Minutes, 11> stages{};
    bool without_part_minutes = false; ///< a part's minutes are not known
};

/// Which panels bear old film, as they are named on the command line.
struct OldFilm {
    bool everywhere = false;
    std::vector<std::string> panels;
};

/// Minutes are those of the shop, its pace included. `left_out`, sorted, is what no film of the whole
/// job covers: by it parts come off. None: without parts, which another film's job takes off.
JobWork work_of(const Job& job, const Shop& shop, const OldFilm& old_film,
                const std::vector<LeftOut>* left_out);

/// Both jobs of one vehicle, as one: its stages of the whole vehicle count once.
JobWork together(JobWork first, const JobWork& second);

} // namespace pelt::order
