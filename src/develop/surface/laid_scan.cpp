// SPDX-License-Identifier: MIT
#include "develop/surface/laid_scan.hpp"

#include "develop/surface/convex.hpp"
#include "develop/surface/decimate.hpp"
#include "develop/surface/lid.hpp"
#include "develop/surface/roof.hpp"
#include "geometry/mesh/mesh.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

namespace pelt::develop {
namespace {

constexpr double spacings_wanted = 25; ///< to the noise
constexpr double spacings_needed = 10;
constexpr double spacings_of_a_clean_one = 200;
constexpr double trusted_of_a_rough_one = .999; ///< of its area

/// How many triangles are enough, and fine enough for the noise. Triangles of one side h have the
/// area h² √3 / 4.
std::size_t triangles_wanted(double area, double noise_mm) {
    constexpr double most = 8'000;
    constexpr double fewest = 800; // with fewer the shape itself is lost
    const double side = spacings_wanted * noise_mm;
    const double fit = side > 0 ? area / (side * side * std::sqrt(3.0) / 4) : most;
    return static_cast<std::size_t>(std::clamp(fit, fewest, most));
}

} // namespace

Sheet3 sheet_of(const Surface& surface) {
    Sheet3 sheet{
        surface.points, surface.triangles, surface.triangles.size(), surface.loops.front(), {}};
    for (std::size_t i = 1; i < surface.loops.size(); ++i) {
        const std::vector<Triangle> lid = lid_over(surface.points, surface.loops[i]);
        sheet.triangles.insert(sheet.triangles.end(), lid.begin(), lid.end());
        sheet.rims.insert(sheet.rims.end(), surface.loops[i].begin(), surface.loops[i].end());
    }
    return sheet;
}

LaidScan::LaidScan(std::shared_ptr<const Surface> scan) : scan_(std::move(scan)) {
    const double area = geometry::area_of(scan_->points, scan_->triangles);
    noise_mm_ = roughness_of(*scan_).noise_mm;
    Thinned thin = thinned(*scan_, triangles_wanted(area, noise_mm_));
    surface_ = std::move(thin.surface);
    off_mm_ = thin.off_mm;
    spacing_mm_ =
        std::sqrt(area / static_cast<double>(surface_.triangles.size()) * 4 / std::sqrt(3.0));
    sheet_ = sheet_of(surface_);
    if (noise_mm_ * spacings_of_a_clean_one > spacing_mm_)
        sheet_.trusted = trusted_of_a_rough_one;
    flat_ = flattened(sheet_);
}

bool LaidScan::too_rough() const {
    return spacing_mm_ < spacings_needed * noise_mm_;
}

const Flat& LaidScan::layout(std::optional<double> limit) const {
    if (!limit || flat_->natural_stretch <= *limit)
        return flat_->natural;
    Layout* layout = nullptr;
    {
        const std::lock_guard lock(mutex_);
        layout = &layouts_[*limit];
    }
    std::call_once(layout->once, [&] { layout->flat = layout_within(*flat_, *limit); });
    return layout->flat;
}

std::optional<double> LaidScan::bound() const {
    std::call_once(bound_once_, [&] {
        const bool convex =
            sheet_.rims.empty() && nearly_convex(outline_in(flat_->natural, sheet_.outline));
        bound_ = convex ? roof_bound(sheet_, flat_->patch) : disc_bound(sheet_, flat_->patch);
    });
    return bound_;
}

bool LaidScans::Kept::ByContent::operator()(const std::shared_ptr<const Surface>& a,
                                            const std::shared_ptr<const Surface>& b) const {
    const auto all = [](const Point3& p) { return std::tie(p.x, p.y, p.z); };
    const auto before = [&](const Point3& p, const Point3& q) { return all(p) < all(q); };
    if (a == b)
        return false;
    if (a->points.size() != b->points.size())
        return a->points.size() < b->points.size();
    if (a->triangles != b->triangles)
        return a->triangles < b->triangles;
    if (a->points != b->points)
        return std::lexicographical_compare(a->points.begin(), a->points.end(), b->points.begin(),
                                            b->points.end(), before);
    return a->loops < b->loops;
}

std::optional<Division>
LaidScan::division(const std::vector<double>& key,
                   const std::function<std::optional<Division>()>& search) const {
    Divided* divided = nullptr;
    {
        const std::lock_guard lock(mutex_);
        divided = &divisions_[key];
    }
    std::call_once(divided->once, [&] { divided->division = search(); });
    return divided->division;
}

std::shared_ptr<const LaidScan> LaidScans::Kept::of(const std::shared_ptr<const Surface>& scan) {
    Entry* entry = nullptr;
    {
        const std::lock_guard lock(mutex_);
        entry = &entries_[scan];
    }
    std::call_once(entry->once, [&] { entry->laid = std::make_shared<const LaidScan>(scan); });
    return entry->laid;
}

LaidScans::LaidScans() : kept_(std::make_unique<Kept>()) {}
LaidScans::~LaidScans() = default;

} // namespace pelt::develop
