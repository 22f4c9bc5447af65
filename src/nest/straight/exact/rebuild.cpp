// SPDX-License-Identifier: MIT
// The layout behind the numbers: the search keeps sides only, so the way to reach them is looked
// for once more, on the path of the best layout alone.
#include "model/error.hpp"
#include "nest/straight/exact/exhaustive.hpp"

#include <algorithm>

namespace pelt::nest::straight {

class Rebuilder {
public:
    explicit Rebuilder(const Exhaustive& search) : x_(search) {}

    void add_sections(State s, std::vector<Block>& out) const {
        State near = 0;
        const Length whole = x_.parts_.whole(s);
        x_.states_.split(s, [&](State a, State b) {
            if (x_.is_one_section(s))
                return true;
            if (x_.parts_.whole(a) == never || x_.parts_.whole(b) == never ||
                x_.parts_.whole(a) + x_.parts_.whole(b) != whole)
                return false;
            near = a;
            return true;
        });
        if (near == 0) {
            out.push_back(section(s, {whole, static_cast<Length>(x_.width_)}));
            return;
        }
        add_sections(near, out);
        add_sections(s - near, out);
    }

private:
    /// A part of the pieces in `s` that fits into `within`; its block may be smaller.
    Block section(State s, Sides within) const {
        if (x_.is_single(s))
            return single(s, within);
        if (x_.problem_.stages == 2)
            return row(s, within);
        return x_.problem_.stages == 3 ? columns(s, within) : part(s, within);
    }

    static std::optional<Sides> fitting(Stair stair, Sides within) {
        for (const Sides& sides : stair)
            if (sides.along <= within.along && sides.across <= within.across)
                return sides;
        return std::nullopt;
    }

    Block single(State s, Sides within) const {
        const std::size_t k = x_.last_kind(s);
        const Kind& kind = x_.problem_.kinds[k];
        for (std::size_t orientation = 0; orientation < kind.orientations.size(); ++orientation)
            if (kind.orientations[orientation].along <= within.along &&
                kind.orientations[orientation].across <= within.across)
                return piece_block(x_.problem_, k, orientation);
        throw ProgramError("the exhaustive search lost a piece");
    }

    Block part(State s, Sides within) const {
        if (x_.is_single(s))
            return single(s, within);
        std::optional<Block> found;
        x_.states_.split(s, [&](State a, State b) {
            if (const auto two = beside(x_.parts_[a], x_.parts_[b], within))
                found = put_beside(part(a, two->first), part(b, two->second));
            else if (const auto stacked = x_.is_one_section(s)
                                              ? std::nullopt
                                              : behind(x_.parts_[a], x_.parts_[b], within))
                found = put_behind(part(a, stacked->first), part(b, stacked->second));
            return found.has_value();
        });
        check(found.has_value());
        return *std::move(found);
    }

    static Block line(std::vector<Block> blocks, Axis direction) {
        return blocks.size() == 1 ? std::move(blocks.front())
                                  : in_line(std::move(blocks), direction);
    }

    Block columns(State s, Sides within) const {
        std::vector<Block> out;
        add_columns(s, within, out);
        return line(std::move(out), across);
    }

    void add_columns(State s, Sides within, std::vector<Block>& out) const {
        if (fitting(x_.columns_[s], within)) {
            std::vector<Block> pieces;
            add_pieces(s, within, x_.columns_, along, pieces);
            out.push_back(line(std::move(pieces), along));
            return;
        }
        bool found = false;
        const auto tried = [&](State column, State rest) {
            const auto two = beside(x_.columns_[column], x_.parts_[rest], within);
            if (!two)
                return false;
            found = true;
            add_columns(column, two->first, out);
            add_columns(rest, two->second, out);
            return true;
        };
        x_.states_.split(s, [&](State a, State b) { return tried(a, b) || tried(b, a); });
        check(found);
    }

    Block row(State s, Sides within) const {
        std::vector<Block> pieces;
        add_pieces(s, within, x_.parts_, across, pieces);
        return line(std::move(pieces), across);
    }

    /// Pieces one after the other, put together one by one in the order of their kinds.
    void add_pieces(State s, Sides within, const Stairs& stairs, Axis direction,
                    std::vector<Block>& out) const {
        if (x_.is_single(s)) {
            out.push_back(single(s, within));
            return;
        }
        const State one = x_.states_.one(x_.last_kind(s));
        for (const Sides& rest : stairs[s - one]) {
            Sides left = within;
            (direction == along ? left.along : left.across) -=
                direction == along ? rest.along : rest.across;
            if (rest.along <= within.along && rest.across <= within.across && fits(one, left)) {
                add_pieces(s - one, rest, stairs, direction, out);
                out.push_back(single(one, left));
                return;
            }
        }
        check(false);
    }

    bool fits(State one, Sides within) const {
        const std::vector<Orientation>& orientations =
            x_.problem_.kinds[x_.last_kind(one)].orientations;
        return std::any_of(
            orientations.begin(), orientations.end(), [&](const Orientation& orientation) {
                return orientation.along <= within.along && orientation.across <= within.across;
            });
    }

    using Two = std::optional<std::pair<Sides, Sides>>;

    static Two beside(Stair a, Stair b, Sides within) {
        for (const Sides& near : a)
            if (near.along <= within.along && near.across <= within.across)
                if (const auto far = fitting(b, {within.along, within.across - near.across}))
                    return {{near, *far}};
        return std::nullopt;
    }

    static Two behind(Stair a, Stair b, Sides within) {
        for (const Sides& near : a)
            if (near.along <= within.along && near.across <= within.across)
                if (const auto far = fitting(b, {within.along - near.along, within.across}))
                    return {{near, *far}};
        return std::nullopt;
    }

    static void check(bool found) {
        if (!found)
            throw ProgramError("the exhaustive search lost its way back");
    }

    const Exhaustive& x_;
};

std::vector<Block> Exhaustive::sections() const {
    std::vector<Block> out;
    Rebuilder(*this).add_sections(states_.all(), out);
    return out;
}

} // namespace pelt::nest::straight
