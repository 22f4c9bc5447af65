// SPDX-License-Identifier: MIT
// How much film is spoilt, and how much spare makes an order suffice. Inside order/ only.
//
// A piece is spoilt k times with probability r^k (1 − r), independently of the others; a remake can
// be spoilt too. Each time it costs a crosscut of the whole width as long as the shorter side that
// its direction allows to lie along; remakes share no crosscut. The sum's distribution is found
// exactly on the ruler's grid, without a simulation.
//
// How: n alike pieces of cost c have the generating function ((1 − r) / (1 − r z^c))^n. The
// logarithmic derivative of the product over all kinds of pieces gives each probability from those
// before it, by sums of positive numbers alone:
//   s g(s) = Σ n c u(s),   u(s) = r (g(s − c) + u(s − c)),   g(0) = Π (1 − r)^n.
#pragma once

#include "model/fault.hpp"
#include "model/order.hpp"
#include "model/plan.hpp"

#include <cstddef>
#include <vector>

namespace pelt::order {

/// So many alike pieces, what one remake of each takes, and how often it is needed (0 … below 1).
struct Remakes {
    Um cost = 0;
    double chance = 0;
    std::size_t count = 1;
    std::size_t kept = 0; ///< so many remakes, the first, are cut from offcuts and cost nothing
};

/// The film that remakes take, from none upwards, a step of the ruler at a time.
class SpoiltFilm {
public:
    /// Costs round up to steps.
    SpoiltFilm(const std::vector<Remakes>& remakes, Um step);

    /// The film at which this stands.
    Um film() const { return static_cast<Um>(at_) * step_; }
    /// The probability that no more than that is spoilt.
    double probability() const;
    void go_on();

private:
    /// Alike remakes, and their last values of g + u, a ring as long as the cost.
    struct Kind {
        std::size_t cost;
        double chance;
        double weight; ///< count times cost
        double u;
        std::size_t place; ///< in the ring, of the film at which this stands
        std::vector<double> before;
    };

    void start(const std::vector<Remakes>& remakes);
    void keep_within_range();
    void scale(int by);

    Um step_;
    std::size_t at_ = 0;
    std::vector<Kind> kinds_;
    double sum_ = 0;   ///< of g so far, times 2^-exponent, as are g and u
    int exponent_ = 0; ///< many pieces make g(0) smaller than a double can be
};

/// The probability that `film` (0 or more) suffices, and the least film that suffices with a
/// probability below 1.
double enough_with(const std::vector<Remakes>& remakes, Um step, Um film);
Um film_for(const std::vector<Remakes>& remakes, Um step, double probability);

/// What the pieces of a job cost when they are spoilt. `layout`: its offcuts are kept for remakes;
/// none: there are none yet.
std::vector<Remakes> remakes_of(const Job& job, const Layout* layout = nullptr);

/// What is spare for a job, `sure_percent` above 0 and below 100; what it comes to on an order is
/// filled in by `with_what_is_there`. With offcuts kept for remakes, each for one kind of piece,
/// every probability is a lower bound: what they could still be used for besides is not counted.
Spare spare_for(const Job& job, double sure_percent, const Layout* layout = nullptr);

/// Says of which panel's remakes most of the spare is. Takes a search for every panel.
void find_costliest(Spare& spare, const Job& job, const Layout& layout);

/// Says how often what is bought suffices or, where nothing is bought, what is left on the shelf of
/// the batches that are used; warns where that is less than was asked.
Spare with_what_is_there(Spare spare, const Job& job, const Layout& layout, const Order& order,
                         Faults& faults);

} // namespace pelt::order
