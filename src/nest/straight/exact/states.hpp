// SPDX-License-Identifier: MIT
// Which pieces a part of a layout holds, as one number: the copies taken of every kind are the
// digits of a number in mixed radix. A part of a state's pieces is then a smaller number, and what
// is left of it is the difference.
#pragma once

#include "nest/straight/problem.hpp"

#include <cstdint>
#include <vector>

namespace pelt::nest::straight {

using State = std::uint32_t;

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

    /// Calls `visit(part, rest)` for every way to split a state in two, each pair once, neither of
    /// them empty; stops when it returns true.
    template <class Visit>
    void split(State s, Visit&& visit) const;

private:
    std::vector<State> weight_;
    std::vector<State> radix_;
    State all_ = 0;
    std::vector<State> by_pieces_;
    std::vector<std::size_t> layers_;
};

template <class Visit>
void States::split(State s, Visit&& visit) const {
    struct Digit {
        State weight = 0;
        State most = 0;
        State now = 0;
    };
    std::array<Digit, 32> digits;
    std::size_t used = 0;
    for (std::size_t k = 0; k < kinds(); ++k)
        if (const auto most = static_cast<State>(copies(s, k)); most > 0)
            digits[used++] = {weight_[k], most, 0};
    State part = 0;
    while (true) {
        std::size_t d = 0;
        while (d < used && digits[d].now == digits[d].most) {
            part -= digits[d].now * digits[d].weight;
            digits[d].now = 0;
            ++d;
        }
        if (d == used)
            return;
        ++digits[d].now;
        part += digits[d].weight;
        if (part > s - part || visit(part, s - part))
            return;
    }
}

} // namespace pelt::nest::straight
