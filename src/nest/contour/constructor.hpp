// SPDX-License-Identifier: MIT
// A first layout: items one after another, each as near to the free end as it goes.
#pragma once

#include "nest/contour/mover.hpp"

#include <cstdint>
#include <vector>

namespace pelt::nest::contour {

class Constructor {
public:
    Constructor(const Problem& problem, Random& random);

    /// Places the items in this order, each in the first bay that still takes it. Items that no
    /// bay takes are returned; their poses are of no meaning.
    std::vector<std::uint32_t> run(const std::vector<std::uint32_t>& order);

    /// Lies there from now on.
    void keep(std::uint32_t item, const Pose& pose);

    std::vector<Pose> poses() const { return scene_.poses(); }
    std::uint64_t work() const { return mover_.work(); }

private:
    struct Found {
        Pose pose;
        double score = std::numeric_limits<double>::infinity();
    };
    bool place(std::uint32_t item);
    Found best_in(std::uint32_t item, std::uint32_t bay);
    double near_the_end(const Kind& kind, std::uint32_t bay) const;
    void try_option(std::uint32_t item, std::uint32_t option, std::uint32_t bay, double from,
                    Found& best);
    void try_row(std::uint32_t item, Pose pose, const Span& room, Found& best);
    void settle(std::uint32_t item, Found& found);
    double score(const Pose& pose) const;
    std::vector<double> rows(const Option& option, const Span& room);

    const Problem* problem_;
    Random* random_;
    Scene scene_;
    Mover mover_;
    std::vector<std::uint32_t> recent_;
    std::vector<double> ends_; // of what lies in each bay
    /// By kind: no room before this in the bay at hand; its walks begin there.
    struct Known {
        std::uint32_t bay = 0;
        double from = 0;
    };
    std::vector<Known> full_before_;
};

/// Orders worth trying, `variant` 0, 1, 2 … : by area, longest side, hull, width, and after that
/// by area with chance mixed in.
std::vector<std::uint32_t> item_order(const Problem& problem, std::size_t variant, Random& random);

} // namespace pelt::nest::contour
