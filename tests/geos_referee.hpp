// SPDX-License-Identifier: MIT
// GEOS as a second opinion on plane figures. Millimetres. For tests only.
#pragma once

#include "model/polygon.hpp"

#include <geos_c.h>

#include <cstdarg>
#include <memory>
#include <stdexcept>
#include <vector>

namespace pelt::test {

/// A figure that GEOS knows.
class Figure {
public:
    static Figure of(const std::vector<Point>& ring) { return Figure(polygon(ring)); }

    static Figure of(const Polygon& figure) {
        Figure out(polygon(in_mm(figure.outer)));
        for (const Ring& hole : figure.holes)
            out = out.without(Figure(polygon(in_mm(hole))));
        return out;
    }

    static Figure of(const std::vector<Polygon>& figures) {
        std::vector<Figure> parts;
        for (const Polygon& figure : figures)
            parts.push_back(of(figure));
        return of_all(std::move(parts));
    }

    /// The union of many figures.
    static Figure of_all(std::vector<Figure> parts) {
        std::vector<GEOSGeometry*> raw;
        for (Figure& part : parts)
            raw.push_back(part.geometry_.release());
        GEOSGeometry* all = GEOSGeom_createCollection_r(
            context(), GEOS_GEOMETRYCOLLECTION, raw.data(), static_cast<unsigned>(raw.size()));
        const Figure collection(all);
        return Figure(GEOSUnaryUnion_r(context(), collection.geometry_.get()));
    }

    Figure with(const Figure& other) const {
        return Figure(GEOSUnion_r(context(), geometry_.get(), other.geometry_.get()));
    }
    Figure without(const Figure& other) const {
        return Figure(GEOSDifference_r(context(), geometry_.get(), other.geometry_.get()));
    }
    Figure within(const Figure& other) const {
        return Figure(GEOSIntersection_r(context(), geometry_.get(), other.geometry_.get()));
    }

    /// Grown by `distance` (negative: shrunk), mitred, the mitre cut at twice the distance.
    Figure grown(double distance) const {
        return Figure(GEOSBufferWithStyle_r(context(), geometry_.get(), distance, 8,
                                            GEOSBUF_CAP_FLAT, GEOSBUF_JOIN_MITRE, 2));
    }

    bool is_valid() const { return GEOSisValid_r(context(), geometry_.get()) == 1; }

    double area() const {
        double value = 0;
        GEOSArea_r(context(), geometry_.get(), &value);
        return value;
    }

    /// The area of what lies in one of the two but not in both.
    double differs_by(const Figure& other) const {
        return Figure(GEOSSymDifference_r(context(), geometry_.get(), other.geometry_.get()))
            .area();
    }

private:
    struct Deleter {
        void operator()(GEOSGeometry* geometry) const { GEOSGeom_destroy_r(context(), geometry); }
    };

    explicit Figure(GEOSGeometry* geometry) : geometry_(geometry) {
        if (geometry == nullptr)
            throw std::runtime_error("GEOS refused a figure");
    }

    static GEOSContextHandle_t context() {
        static const std::unique_ptr<GEOSContextHandle_HS, decltype(&GEOS_finish_r)> handle(
            GEOS_init_r(), &GEOS_finish_r);
        return handle.get();
    }

    static std::vector<Point> in_mm(const Ring& ring) {
        std::vector<Point> points;
        for (const GridPoint& p : ring)
            points.push_back({static_cast<double>(p.x) / 1000, static_cast<double>(p.y) / 1000});
        return points;
    }

    static GEOSGeometry* polygon(const std::vector<Point>& ring) {
        const auto n = static_cast<unsigned>(ring.size());
        GEOSCoordSequence* points = GEOSCoordSeq_create_r(context(), n + 1, 2);
        for (unsigned i = 0; i <= n; ++i)
            GEOSCoordSeq_setXY_r(context(), points, i, ring[i % n].x, ring[i % n].y);
        return GEOSGeom_createPolygon_r(context(), GEOSGeom_createLinearRing_r(context(), points),
                                        nullptr, 0);
    }

    std::unique_ptr<GEOSGeometry, Deleter> geometry_;
};

} // namespace pelt::test
