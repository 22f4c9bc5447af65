// SPDX-License-Identifier: MIT
// Which pieces a part of a layout holds, as one number: the copies taken of every kind are the
// digits of a number in mixed radix. A part of a state's pieces is then a smaller number, and what
// is left of it is the difference.
#pragma once

#include "nest/straight/problem.hpp"

#include <array>
#include <bit>
#include <cstdint>
#include <span>
#include <vector>

namespace pelt::nest::straight {

using State = std::uint32_t;

/// All numbers whose digits are at most those of another one, from 0 on, in rising order.
class Walk {
public:
    void add_digit(State weight, State most) { digits_[used_++] = {weight, most, 0}; }
    State now() const { return now_; }
    /// False after the last one.
    bool next();

private:
    struct Digit {
        State weight = 0;
        State most = 0;
        State now = 0;
    };
    std::array<Digit, 32> digits_;
    std::size_t used_ = 0;
    State now_ = 0;
};

class StateSet;

class States {
public:
    explicit States(const std::vector<Kind>& kinds);

    /// How many states there are, and ways to split all of them in two; as doubles, for they may
    /// be beyond all bounds.
    static double count(const std::vector<Kind>& kinds);
    static double splits(const std::vector<Kind>& kinds);

    std::size_t kinds() const { return weight_.size(); }
    State all() const { return all_; }
    std::size_t copies(State s, std::size_t kind) const { return s / weight_[kind] % radix_[kind]; }
    State one(std::size_t kind) const { return weight_[kind]; }
    /// All states but the empty one, those of few pieces first.
    const std::vector<State>& by_pieces() const { return by_pieces_; }
    /// Where in by_pieces() the states of that many pieces begin; one past the end too.
    const std::vector<std::size_t>& layers() const { return layers_; }
    /// So many states in a row differ in their low digits only; at most 64, a word of a StateSet.
    State block() const { return block_; }
    /// Those states from there on in by_pieces() that have as many pieces and are in one block.
    std::span<const State> group(std::size_t from) const;

    /// Calls `visit(part, rest)` for every way to split a state in two, each pair once, neither of
    /// them empty; stops when it returns true.
    template <class Visit>
    void split(State s, Visit&& visit) const;
    /// Calls `visit(i, part, rest)` for every way to split the i-th of some states of one block
    /// into one of each set with part <= rest. Gives the number of words looked at.
    template <class Visit>
    std::uint64_t split(std::span<const State> block, const StateSet& parts, const StateSet& rests,
                        Visit&& visit) const;

private:
    void list_by_pieces(std::size_t pieces);
    void make_blocks();
    /// Below the state, with the digits from that kind on, in units of that kind's.
    Walk walk(State s, std::size_t from_kind) const;

    std::vector<State> weight_;
    std::vector<State> radix_;
    State all_ = 0;
    std::vector<State> by_pieces_;
    std::vector<std::size_t> layers_;
    std::size_t low_kinds_ = 0;
    State block_ = 1;
    std::array<std::uint64_t, 64> below_{}; ///< by low digits: a bit for all that are at most those
};

/// Some of the states, a bit each. A word has the states of one block. Taking digits from digits
/// never borrows, so what is left of low digits `s` after `a` is the bit s - a: the word turned
/// about, and shifted. A whole block of ways to split is then one AND.
class StateSet {
public:
    void clear(const States& states);
    void add(State s);
    bool has(State s) const { return (words_[s / block_] >> s % block_ & 1) != 0; }
    std::uint64_t word(State block) const { return words_[block]; }
    /// Shifted right by 63 - low, bit `a` tells whether low - a is in the set, for a <= low.
    std::uint64_t turned(State block) const { return turned_[block]; }

private:
    State block_ = 1;
    std::vector<std::uint64_t> words_;
    std::vector<std::uint64_t> turned_; ///< the same with the bits in reverse
};

inline bool Walk::next() {
    std::size_t d = 0;
    while (d < used_ && digits_[d].now == digits_[d].most) {
        now_ -= digits_[d].now * digits_[d].weight;
        digits_[d].now = 0;
        ++d;
    }
    if (d == used_)
        return false;
    ++digits_[d].now;
    now_ += digits_[d].weight;
    return true;
}

template <class Visit>
void States::split(State s, Visit&& visit) const {
    Walk part = walk(s, 0);
    while (part.next())
        if (part.now() > s - part.now() || visit(part.now(), s - part.now()))
            return;
}

// The walk over the high digits, and most looks at words, serve all states of the block.
template <class Visit>
std::uint64_t States::split(std::span<const State> block, const StateSet& parts,
                            const StateSet& rests, Visit&& visit) const {
    const State high = block.front() / block_;
    std::uint64_t words = 0;
    Walk part = walk(block.front(), low_kinds_);
    do {
        const State rest = high - part.now();
        if (part.now() > rest)
            break;
        ++words;
        const std::uint64_t near = parts.word(part.now());
        const std::uint64_t far = rests.turned(rest);
        if (near == 0 || far == 0)
            continue;
        words += block.size();
        for (std::size_t i = 0; i < block.size(); ++i) {
            const State low = block[i] - high * block_;
            std::uint64_t both = near & (far >> (63 - low)) & below_[low];
            if (part.now() == rest)
                both &= (std::uint64_t{2} << low / 2) - 1; // the first half
            for (; both != 0; both &= both - 1) {
                const State a = part.now() * block_ + static_cast<State>(std::countr_zero(both));
                visit(i, a, block[i] - a);
            }
        }
    } while (part.next());
    return words;
}

} // namespace pelt::nest::straight
