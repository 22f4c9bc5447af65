// SPDX-License-Identifier: MIT
// What the vehicles ask for is placed, every part of it once, and comes from one batch.
#include "verify/checks.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace pelt {
namespace {

using Told = std::vector<std::string>;

/// Vehicles that have one panel "wing" each, on both sides.
struct Asked {
    Job job;
    Layout layout;

    explicit Asked(std::size_t vehicles = 1) {
        Panel wing;
        wing.name = "wing";
        wing.sides = Sides::both;
        for (std::size_t i = 0; i < vehicles; ++i) {
            job.vehicles.emplace_back();
            job.vehicles.back().panels.push_back(wing);
        }
        job.rolls.emplace_back();
        layout.rolls.emplace_back();
    }

    Asked& place(const PieceId& id, std::size_t roll = 0) {
        Piece piece;
        piece.ids.push_back(id);
        job.pieces.push_back(piece);
        layout.rolls.at(roll).placements.push_back({job.pieces.size() - 1, 0, 0, no_turn, {}});
        return *this;
    }
    Asked& leave_out(int vehicle, Side side) {
        job.left_out.push_back({vehicle, 0, side});
        return *this;
    }
    Told missing() const {
        Told out;
        verify::check_complete(job, layout, out);
        return out;
    }
};

PieceId wing(Side side, int copy = 1, int part = 1, int parts = 1, int vehicle = 0) {
    return {vehicle, 0, side, copy, part, parts, PieceKind::main, ""};
}
PieceId wing_of(int vehicle, Side side) {
    return wing(side, 1, 1, 1, vehicle);
}

TEST_CASE("what is left out is one side of one vehicle's panel") {
    CHECK(Asked().leave_out(0, Side::left).place(wing(Side::right)).missing() == Told{});
    CHECK(Asked().leave_out(0, Side::left).missing() ==
          Told{"panel 'wing', right, copy 1: not placed"});
    const auto of_the_first = [] {
        Asked two(2);
        two.leave_out(0, Side::left).leave_out(0, Side::right);
        return two;
    };
    CHECK(of_the_first().place(wing_of(1, Side::left)).place(wing_of(1, Side::right)).missing() ==
          Told{});
    CHECK(of_the_first().missing() == Told{"vehicle 2, panel 'wing', left, copy 1: not placed",
                                           "vehicle 2, panel 'wing', right, copy 1: not placed"});
}

TEST_CASE("copies are count by faces by times") {
    const auto copies = [](int count, int faces, int times) {
        Asked some;
        some.leave_out(0, Side::right);
        some.job.vehicles.front().panels.front().count = count;
        some.job.vehicles.front().panels.front().faces = faces;
        some.job.times = times;
        for (int copy = 1; copy <= 6; ++copy)
            some.place(wing(Side::left, copy));
        return some.missing();
    };
    CHECK(copies(3, 2, 1) == Told{});
    CHECK(copies(1, 2, 3) == Told{});
    CHECK(copies(3, 1, 2) == Told{});
    CHECK(copies(5, 1, 1) == Told{"panel 'wing', left, copy 6: placed but not asked for"});
    CHECK(copies(7, 1, 1) == Told{"panel 'wing', left, copy 7: not placed"});
}

TEST_CASE("of a divided panel every part is there once, of the same number of parts") {
    const auto parts = [](const std::vector<std::pair<int, int>>& of) {
        Asked some;
        some.leave_out(0, Side::right);
        for (const auto& [part, count] : of)
            some.place(wing(Side::left, 1, part, count));
        return some.missing();
    };
    const Told wrong{"panel 'wing', left, copy 1: not every piece is there once"};
    CHECK(parts({{2, 2}, {1, 2}}) == Told{});
    CHECK(parts({{1, 2}}) == wrong);
    CHECK(parts({{2, 2}}) == wrong);
    CHECK(parts({{1, 2}, {3, 2}}) == wrong);
    CHECK(parts({{1, 2}, {2, 3}}) == wrong);
    CHECK(parts({{1, 2}, {2, 2}, {3, 3}}) == wrong);
}

TEST_CASE("single pieces of a divided panel, and single ones of several, may be left out") {
    const auto told = [](const LeftOut& out, const std::vector<std::pair<int, int>>& pieces) {
        Asked some;
        some.leave_out(0, Side::right);
        some.job.vehicles.front().panels.front().count = 2;
        some.job.left_out.push_back(out);
        for (const auto& [copy, part] : pieces)
            some.place(wing(Side::left, copy, part, 2));
        return some.missing();
    };
    const LeftOut first_piece{0, 0, Side::left, LeftOut::all, 1};
    const LeftOut second_one{0, 0, Side::left, 2, LeftOut::all};
    const LeftOut one_piece{0, 0, Side::left, 2, 1};
    const Told wrong{"panel 'wing', left, copy 1: not every piece is there once",
                     "panel 'wing', left, copy 2: not every piece is there once"};
    CHECK(told(first_piece, {{1, 2}, {2, 2}}) == Told{});
    CHECK(told(first_piece, {{1, 1}, {1, 2}, {2, 1}, {2, 2}}) == wrong);
    CHECK(told(second_one, {{1, 1}, {1, 2}}) == Told{});
    CHECK(told(second_one, {{1, 1}, {1, 2}, {2, 1}, {2, 2}}) ==
          Told{"panel 'wing', left, copy 2: placed but not asked for"});
    CHECK(told(one_piece, {{1, 1}, {1, 2}, {2, 2}}) == Told{});
    CHECK(told(one_piece, {{1, 1}, {1, 2}}) == Told{"panel 'wing', left, copy 2: not placed"});
}

/// The left wing from one roll, the right one from another.
Told from_two(const Roll& one, const Roll& other, bool batch_free = false) {
    Asked both;
    both.layout.rolls.emplace_back();
    both.layout.rolls[1].roll = 1;
    both.job.rolls = {one, other};
    both.job.vehicles.front().panels.front().batch_free = batch_free;
    both.place(wing(Side::left)).place(wing(Side::right), 1);
    Told out;
    verify::check_batches(both.job, both.layout, out);
    return out;
}

Roll roll_of(const std::string& name, bool is_new, const std::string& batch) {
    return {name, is_new, batch, 0, 0, {}, true, {}};
}

TEST_CASE("new film is one batch or that which is asked for, stock of no known batch is its own") {
    const Roll fresh = roll_of("new 1", true, "");
    const Roll more = roll_of("new 2", true, "");
    const Roll like_stock = roll_of("new 1", true, "B1");
    const Roll stock = roll_of("stock A", false, "B1");
    const Roll unknown = roll_of("stock C", false, "");
    const std::string several = "the job comes from several batches: ";
    CHECK(from_two(fresh, more) == Told{});
    CHECK(from_two(like_stock, stock) == Told{});
    CHECK(from_two(stock, roll_of("stock B", false, "B1")) == Told{});
    CHECK(from_two(fresh, stock) == Told{several + "batch B1 and new film"});
    CHECK(from_two(unknown, roll_of("stock D", false, "")) ==
          Told{several + "unknown: stock C and unknown: stock D"});
    CHECK(from_two(fresh, stock, true) == Told{});
}

} // namespace
} // namespace pelt
