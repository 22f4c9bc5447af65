// SPDX-License-Identifier: MIT
// A scan laid flat, as far as no film matters, and its layouts for films. Inside develop/ only.
#pragma once

#include "develop/develop.hpp"
#include "develop/surface/flatten.hpp"
#include "develop/surface/noise.hpp"
#include "model/surface.hpp"

#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <vector>

namespace pelt::develop {

/// The surface with lids over its openings.
Sheet3 sheet_of(const Surface& surface);

/// Layouts and the bound are made when they are first asked for, and kept. May be asked by several
/// threads at once.
class LaidScan {
public:
    explicit LaidScan(std::shared_ptr<const Surface> scan);

    const Surface& scan() const { return *scan_; }
    /// The scan thinned out where it is finer than is of use, or rough; its loops are the scan's,
    /// in their order.
    const Surface& surface() const { return surface_; }
    /// No point of the scan lies farther from the surface.
    double off_mm() const { return off_mm_; }
    double noise_mm() const { return noise_mm_; }
    /// Between points of the surface, mean.
    double spacing_mm() const { return spacing_mm_; }
    /// Its stretch cannot be told.
    bool too_rough() const;

    /// None where it cannot be laid flat in one piece; then the others must not be asked.
    const std::optional<Flattened>& flat() const { return flat_; }
    const Sheet3& sheet() const { return sheet_; }
    /// To cut for film that stretches by `limit` at most; none: as film lies by itself.
    const Flat& layout(std::optional<double> limit) const;
    /// What no layout goes below, to first order.
    std::optional<double> bound() const;
    /// Where to divide it: `search` is run once for every `key`.
    std::optional<Division> division(const std::vector<double>& key,
                                     const std::function<std::optional<Division>()>& search) const;

private:
    struct Layout {
        std::once_flag once;
        Flat flat;
    };
    struct Divided {
        std::once_flag once;
        std::optional<Division> division;
    };

    std::shared_ptr<const Surface> scan_;
    Surface surface_;
    double off_mm_ = 0;
    double noise_mm_ = 0;
    double spacing_mm_ = 0;
    Sheet3 sheet_;
    std::optional<Flattened> flat_;

    mutable std::mutex mutex_; ///< of the maps, not of what is in them
    mutable std::map<double, Layout> layouts_;
    mutable std::map<std::vector<double>, Divided> divisions_;
    mutable std::once_flag bound_once_;
    mutable std::optional<double> bound_;
};

/// What LaidScans keeps.
class LaidScans::Kept {
public:
    /// The first who asks for a scan lays it flat; others wait.
    std::shared_ptr<const LaidScan> of(const std::shared_ptr<const Surface>& scan);

private:
    struct Entry {
        std::once_flag once;
        std::shared_ptr<const LaidScan> laid;
    };
    /// By what the scan is, not by where it lies: panels and files may hold copies of one.
    struct ByContent {
        bool operator()(const std::shared_ptr<const Surface>& a,
                        const std::shared_ptr<const Surface>& b) const;
    };
    std::mutex mutex_;
    std::map<std::shared_ptr<const Surface>, Entry, ByContent> entries_;
};

} // namespace pelt::develop
