// SPDX-License-Identifier: MIT
// A layout that has been checked. Only `verify` can make one, so nothing unchecked is printed.
#pragma once

#include "model/blank.hpp"
#include "model/film.hpp"
#include "model/layout.hpp"
#include "model/piece.hpp"

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace pelt {

/// What is left out on purpose (`--only`, `--without`, extras): a panel's side, or of it one of
/// several that are alike, or a piece of a divided panel.
struct LeftOut {
    static constexpr int all = 0;
    static constexpr int inlays = -1;

    int vehicle = 0; ///< index into the job's vehicles
    int panel = 0;   ///< index into that vehicle's panels
    Side side = Side::centre;
    int no = all;    ///< from 1, both faces
    int piece = all; ///< from 1, or `inlays`
    bool is_whole_side() const { return no == all && piece == all; }
    /// `faces`: of the panel.
    bool holds(const PieceId& id, int faces) const;
    friend auto operator<=>(const LeftOut&, const LeftOut&) = default;
};

/// Which of several that are alike a piece is for, from 1: what sheets call its "no.".
int no_of(const PieceId& id, int faces);

/// Work that is half done. What is new film is then taken to be of the batch of what is there.
struct HalfDone {
    std::vector<LeftOut> done;      ///< on the vehicle already; left out
    std::vector<LeftOut> cut_again; ///< spoilt before
    bool any() const { return !done.empty() || !cut_again.empty(); }
};

/// Everything a layout is about. Plain data; says nothing of whether the layout is right.
struct Job {
    std::vector<Vehicle> vehicles;
    Film film;
    CutBy by = CutBy::straight;
    int times = 1;
    Um tolerance = 0; ///< how far tape readings may be off, where a panel does not say it itself
    std::vector<std::vector<DevelopedPanel>> developed; ///< [vehicle][panel]
    std::vector<Piece> pieces;                          ///< in canonical order: by shape first
    /// Pieces of divided panels that are not laid out, but others of the same panel are: what is on
    /// the vehicle already, or left out. The seams are theirs too.
    std::vector<Piece> not_cut;
    std::vector<Seam> seams;
    std::vector<Roll> rolls;
    std::vector<LeftOut> left_out; ///< sorted
    HalfDone half_done;
    std::vector<std::string> left_on; ///< hardware that stays on (`--leave`, what waits for it too)
    std::vector<std::string> comes_off; ///< hardware that this job calls for, by the files' order
    bool free_turns = false;            ///< `--turns any`
    std::optional<int> stages = 3; ///< straight: how often film is turned on the table; none: any
    std::optional<Um> table;       ///< straight: longest film that the table takes; none: any
    bool in_order = false;         ///< straight: pieces come off the roll in the order of laying
    /// By piece and copy: its place in the order of laying, all different.
    std::vector<std::vector<std::size_t>> laying;
};

namespace verify {
class Seal;
}

/// A job and a layout of it that passed every check.
class Plan {
public:
    const Job& job() const { return *job_; }
    std::shared_ptr<const Job> shared_job() const { return job_; }
    const Layout& layout() const { return layout_; }

private:
    friend class verify::Seal;
    Plan(std::shared_ptr<const Job> job, Layout layout)
        : job_(std::move(job)), layout_(std::move(layout)) {}
    std::shared_ptr<const Job> job_;
    Layout layout_;
};

} // namespace pelt
