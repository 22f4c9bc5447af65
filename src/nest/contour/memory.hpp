// SPDX-License-Identifier: MIT
// What one search works out about forms and pairs of them, for the next one of the same run.
#pragma once

#include "model/polygon.hpp"
#include "nest/contour/convex_parts.hpp"
#include "nest/contour/field.hpp"
#include "nest/contour/vec.hpp"
#include "nest/nest.hpp"

#include <array>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <tuple>

namespace pelt::nest {

namespace contour {

/// A shape cut into convex parts, in one attitude; its quarter turns share its fields.
struct Form {
    Body body;
    Span box;
    bool obstacle = false; ///< keeps no gap
    std::uint32_t id = 0;  ///< the memory's
};

/// A pair of forms, the second turned by quarters.
struct PairKey {
    std::uint32_t a = 0;
    std::uint32_t b = 0;
    int quarters = 0;
    double need = 0; ///< micrometres between the outlines
    friend auto operator<=>(const PairKey&, const PairKey&) = default;
};

} // namespace contour

/// Forms by their outlines, and their fields. What is made depends on its key alone, so it never
/// matters who asked first, or from which thread.
class Memory {
public:
    contour::Form form(const Polygon& outline, bool obstacle,
                       const std::function<contour::Form()>& make);

    std::shared_ptr<const contour::Field> field(const contour::PairKey& key,
                                                const std::function<contour::Field()>& make);

    /// Forgets everything when it has become much; who holds some of it keeps that.
    void forget_if_full();

private:
    struct OutlineKey {
        Polygon outline;
        bool obstacle = false;
        bool operator<(const OutlineKey& other) const {
            return std::tie(outline.outer, outline.holes, obstacle) <
                   std::tie(other.outline.outer, other.outline.holes, other.obstacle);
        }
    };
    struct Shard {
        std::mutex making;
        std::map<contour::PairKey, std::shared_ptr<const contour::Field>> fields;
        std::size_t bytes = 0;
    };
    std::mutex making_form_;
    std::map<OutlineKey, contour::Form> forms_;
    std::uint32_t next_id_ = 0;
    std::array<Shard, 16> shards_;
};

} // namespace pelt::nest
